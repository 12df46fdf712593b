package warmshelf.shelf;

import java.time.LocalDate;
import java.util.UUID;

/**
 * A stay on what is to be retired.
 *
 * @param to the day it leaves
 * @param mat its name; empty: under a light
 * @param place its number there
 */
public record StayBeyond(UUID id, LocalDate from, LocalDate to, String mat, int place) {}
