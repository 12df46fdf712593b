package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import warmshelf.shelf.RackPicture.GroupPicture;
import warmshelf.shelf.RackPicture.PlacePicture;
import warmshelf.shelf.RackPicture.ShelfPicture;

class RackPictureTest {
    @Test
    void shelves_stand_below_each_other_from_the_top() {
        RackPicture picture = draw();

        assertThat(picture.shelves()).extracting(ShelfPicture::level).containsExactly(1, 2);
        assertThat(picture.shelves().get(0).boardY())
                .isLessThan(picture.shelves().get(1).box().y());
        assertThat(picture.height())
                .isGreaterThan(picture.shelves().get(1).box().y());
    }

    @Test
    void mats_stand_side_by_side_on_their_shelf_inside_the_uprights() {
        RackPicture picture = draw();
        List<GroupPicture> mats = picture.shelves().get(1).groups();

        Box first = mats.get(0).strip();
        Box second = mats.get(1).strip();
        assertThat(mats).extracting(GroupPicture::name).containsExactly("M1", "M2");
        assertThat(first.x() + first.width()).isLessThan(second.x());
        assertThat(second.x() + second.width()).isLessThan(picture.width());
        assertThat(first.y()).isEqualTo(second.y());
    }

    @Test
    void a_way_of_a_trial_is_named_on_every_kind_of_tray() {
        for (int quarters : new int[] {4, 2, 1}) {
            StayOnBoard plain = DrawnCellar.stay(1, 1, quarters, DrawnCellar.DAY, DrawnCellar.DAY.plusDays(5));
            TrayPicture tray = TrayPicture.of(
                    DrawnCellar.inTrial(plain, new TrialOnBoard(3, "B", "trial 3 way B")),
                    new Box(0, 0, RackDrawing.PLACE_WIDTH, RackDrawing.PLACE_DEPTH),
                    "mat M1, place 1");

            assertThat(tray.lines()).extracting(TrayPicture.Line::text).contains(quarters == 1 ? "3 B" : "trial 3 B");
            assertThat(tray.lines())
                    .allSatisfy(line -> assertThat(line.y())
                            .isBetween(12, tray.box().y() + tray.box().height()));
            assertThat(tray.words()).startsWith("Pepper, trial 3 way B, ");
        }
    }

    @Test
    void a_mat_shows_its_set_point_of_the_day_as_a_word() {
        GroupPicture mat = draw().shelves().get(1).groups().get(0);

        assertThat(mat.celsius()).isEqualTo(27);
        assertThat(mat.warmth()).isEqualTo(WarmScale.HOT);
    }

    @Test
    void a_mat_without_a_set_point_is_not_heated() {
        GroupPicture mat = draw().shelves().get(1).groups().get(1);

        assertThat(mat.celsius()).isNull();
        assertThat(mat.warmth()).isNull();
    }

    @Test
    void a_mat_out_of_service_is_hatched_said_to_the_last_day_and_has_nothing_free() {
        Outage outage = new Outage(
                new java.util.UUID(5, 5),
                DrawnCellar.M1,
                DrawnCellar.DAY.minusDays(2),
                DrawnCellar.DAY.plusDays(3),
                "broken plug");
        Board board = new Board(
                java.util.List.of(DrawnCellar.stay(1, 1, 2, DrawnCellar.DAY, DrawnCellar.DAY.plusDays(5))),
                new SetPoints(java.util.Map.of(DrawnCellar.M1, java.util.Map.of(DrawnCellar.DAY, 27.0))),
                java.util.List.of(outage));

        GroupPicture mat = RackPicture.of(DrawnCellar.rack(), board, DrawnCellar.DAY)
                .shelves()
                .get(1)
                .groups()
                .get(0);

        assertThat(mat.out()).isNotNull();
        assertThat(mat.out().text()).isEqualTo("M1 · out to Fri 12 Mar");
        assertThat(mat.out().words()).endsWith(": broken plug");
        assertThat(mat.warmth()).as("it is not warm").isNull();
        assertThat(mat.places()).allSatisfy(place -> assertThat(place.free()).isEmpty());
        assertThat(mat.places().get(0).trays()).hasSize(1);
        assertThat(RackPicture.of(DrawnCellar.rack(), board, DrawnCellar.DAY.plusDays(3))
                        .shelves()
                        .get(1)
                        .groups()
                        .get(0)
                        .out())
                .as("it is back")
                .isNull();
    }

    @Test
    void a_lit_shelf_has_a_lamp_over_its_places_and_a_warm_one_has_none() {
        RackPicture picture = draw();

        ShelfPicture lit = picture.shelves().get(0);
        assertThat(lit.lamp()).isNotNull();
        assertThat(lit.groups().get(0).places())
                .allSatisfy(place -> assertThat(place.box().y()).isGreaterThan(lit.labelY()));
        assertThat(picture.shelves().get(1).lamp()).isNull();
    }

    @Test
    void a_half_tray_on_quarter_3_is_drawn_on_the_right_and_the_left_is_free() {
        PlacePicture place = draw(DrawnCellar.stay(2, 3, 2, DrawnCellar.DAY.minusDays(4), DrawnCellar.DAY.plusDays(3)))
                .shelves()
                .get(1)
                .groups()
                .get(0)
                .places()
                .get(1);

        int middle = place.box().x() + place.box().width() / 2;
        assertThat(place.trays()).hasSize(1);
        assertThat(place.trays().get(0).box().x()).isGreaterThanOrEqualTo(middle);
        assertThat(place.free()).hasSize(1);
        assertThat(place.free().get(0).x() + place.free().get(0).width()).isLessThanOrEqualTo(middle);
    }

    @Test
    void a_tray_says_in_full_what_it_is_and_where() {
        TrayPicture tray = draw(DrawnCellar.stay(2, 3, 2, DrawnCellar.DAY.minusDays(4), DrawnCellar.DAY.plusDays(3)))
                .shelves()
                .get(1)
                .groups()
                .get(0)
                .places()
                .get(1)
                .trays()
                .get(0);

        assertThat(tray.words())
                .isEqualTo("Pepper, half tray, Ilse, sown, leaves Sat 13 Mar, mat M1 place 2 right half");
        assertThat(tray.lines()).extracting(TrayPicture.Line::text).containsExactly("Pepper", "Ilse", "→ 13 Mar");
    }

    @Test
    void a_half_tray_is_too_narrow_for_words_across_so_they_run_along_it() {
        for (int quarters : new int[] {1, 2, 4}) {
            TrayPicture tray = TrayPicture.of(
                    DrawnCellar.stay(1, 1, quarters, DrawnCellar.DAY, DrawnCellar.DAY.plusDays(9)),
                    new Box(0, 0, RackDrawing.PLACE_WIDTH, RackDrawing.PLACE_DEPTH),
                    "mat M1, place 1");

            assertThat(tray.lines()).extracting(TrayPicture.Line::upwards).containsOnly(quarters == 2);
            assertThat(tray.lines().get(0).text()).isEqualTo(quarters == 1 ? "Pep…" : "Pepper");
        }
    }

    @Test
    void each_shelf_is_a_picture_of_its_own_and_together_they_are_the_rack() {
        RackPicture picture = draw();

        assertThat(picture.shelves().stream()
                        .mapToInt(shelf -> shelf.box().height())
                        .sum())
                .isEqualTo(picture.height());
        assertThat(picture.shelves().get(1).box().y())
                .isEqualTo(picture.shelves().get(0).box().height());
    }

    @Test
    void every_line_of_writing_stands_inside_its_tray() {
        for (int quarters : new int[] {1, 2, 4}) {
            TrayPicture tray = draw(DrawnCellar.stay(1, 1, quarters, DrawnCellar.DAY, DrawnCellar.DAY.plusDays(9)))
                    .shelves()
                    .get(1)
                    .groups()
                    .get(0)
                    .places()
                    .get(0)
                    .trays()
                    .get(0);

            assertThat(tray.lines())
                    .allSatisfy(line -> assertThat(line.y())
                            .isBetween(
                                    tray.box().y() + 10,
                                    tray.box().y() + tray.box().height()));
        }
    }

    @Test
    void a_stay_that_ends_today_leaves_its_place_free() {
        PlacePicture place = draw(DrawnCellar.stay(1, 1, 4, DrawnCellar.DAY.minusDays(7), DrawnCellar.DAY))
                .shelves()
                .get(1)
                .groups()
                .get(0)
                .places()
                .get(0);

        assertThat(place.trays()).isEmpty();
        assertThat(place.free()).hasSize(1);
    }

    @Test
    void a_rack_without_shelves_is_drawn_empty() {
        Rack bare = new Rack(DrawnCellar.rack().id(), DrawnCellar.rack().siteId(), "B", 2, 1, List.of());

        RackPicture picture = RackPicture.of(bare, DrawnCellar.board(), DrawnCellar.DAY);

        assertThat(picture.shelves()).isEmpty();
        assertThat(picture.width()).isPositive();
        assertThat(picture.height()).isPositive();
    }

    private static RackPicture draw(StayOnBoard... stays) {
        return RackPicture.of(DrawnCellar.rack(), DrawnCellar.board(stays), DrawnCellar.DAY);
    }
}
