package truelead.checker.job;

import java.util.OptionalDouble;

/**
 * The stock and its hardness.
 *
 * @param group    what it is
 * @param words    as it was written
 * @param hardness Rockwell C, 0 to 70; converted where it was given in HB or HV; empty where nobody says
 */
public record Stock(StockGroup group, String words, OptionalDouble hardness) {
}
