package slantlight.scene;

import java.util.Optional;
import java.util.OptionalDouble;
import slantlight.geom.Vec2;

/**
 * A joint that is already up, in plane coordinates of its surface, m.
 *
 * @param name the user's name for it, if any
 * @param crownHeight height of the broad crown measured on site, m
 * @param crownWidth width of the broad crown measured on site, m
 */
public record GivenJoint(
    Optional<String> name,
    JointKind kind,
    Vec2 from,
    Vec2 to,
    OptionalDouble crownHeight,
    OptionalDouble crownWidth) {}
