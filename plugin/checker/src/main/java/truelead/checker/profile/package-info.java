/**
 * What differs from machine to machine: meanings of codes, defaults, limits.
 *
 * <p>{@link truelead.checker.profile.MachineProfile} is read from lines {@code key = value}; {@link truelead.checker.profile.ProfileKey}
 * has every key with what it is for, {@link truelead.checker.profile.Meaning} what a code can do.
 * {@link truelead.checker.profile.ProfileGuess} takes a program whose machine nobody has named for turning where its words say so. The
 * shipped profiles stand beside these classes, as resources.
 */
package truelead.checker.profile;
