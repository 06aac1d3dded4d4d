package slantlight.score;

import java.util.List;
import slantlight.light.SamplePoint;
import slantlight.scene.Eye;

/**
 * A point of a joint (or a fastener spot) that is followed through the year.
 *
 * @param sample frame with u across the joint, v along it
 * @param eyes the eyes that judge it, best placed first; empty when nobody sees it
 */
record FollowedPoint(SamplePoint sample, List<Eye> eyes) {}
