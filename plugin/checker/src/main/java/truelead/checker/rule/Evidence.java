package truelead.checker.rule;

import java.util.Optional;
import truelead.checker.program.Location;

/**
 * A number in a finding and where it comes from.
 *
 * @param name   what it is in words of the trade: {@code pitch}, {@code speed}, {@code drill diameter}
 * @param value  as shown, with its unit
 * @param origin programmed, called out, standard (table and clause), machine profile, or stated default, in words
 * @param at     the place in the program, where there is one
 */
public record Evidence(String name, String value, String origin, Optional<Location> at) {
}
