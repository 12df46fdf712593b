package warmshelf.frost.files;

/**
 * Rows of the U.S. Climate Normals 1991-2020 (NOAA/NCEI, public domain) for Albany International Airport, New York: last
 * 32 °F with 10, 50 and 90 % on 11 May, 27 April and 16 April, first on 3 October, 15 October and 1 November; last 28 °F on
 * 28 April, 16 April and 3 April, first on 11 October, 28 October and 10 November.
 */
final class Normals {
    static final String HEADING = "\"STATION\",\"DATE\",\"LATITUDE\",\"LONGITUDE\",\"ELEVATION\",\"NAME\","
            + "\"ANN-TMIN-PRBLST-T32FP10\",\"meas_flag_ANN-TMIN-PRBLST-T32FP10\",\"ANN-TMIN-PRBLST-T32FP50\","
            + "\"ANN-TMIN-PRBLST-T32FP90\",\"ANN-TMIN-PRBFST-T32FP10\",\"ANN-TMIN-PRBFST-T32FP50\",\"ANN-TMIN-PRBFST-T32FP90\","
            + "\"ANN-TMIN-PRBLST-T28FP10\",\"ANN-TMIN-PRBLST-T28FP50\",\"ANN-TMIN-PRBLST-T28FP90\","
            + "\"ANN-TMIN-PRBFST-T28FP10\",\"ANN-TMIN-PRBFST-T28FP50\",\"ANN-TMIN-PRBFST-T28FP90\","
            + "\"ANN-TMIN-PRBLST-T16FP50\"\n";
    static final String ALBANY = "\"USW00014735\",\"\",\"42.7431\",\"-73.8092\",\"85.6\",\"ALBANY INTL AP, NY US\","
            + "\"05/11\",\" \",\"04/27\",\"04/16\",\"10/03\",\"10/15\",\"11/01\","
            + "\"04/28\",\"04/16\",\"04/03\",\"10/11\",\"10/28\",\"11/10\",\"03/20\"\n";
    static final String FILE = HEADING + ALBANY;

    private Normals() {}
}
