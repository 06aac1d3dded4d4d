package slantlight.light;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slantlight.geom.Face;
import slantlight.geom.Vec3;

/** Which bodies may be thrown as the hull of their corners: those closed and convex. */
class BodyTest {
  private static final Vec3 EAST_3 = new Vec3(3, 0, 0);

  @Test
  void boxesAndWedgesAreConvex() {
    assertThat(Body.of(prism(0, 0, 0, 2, 1, 2, 1, 0)).convex()).isTrue();
    assertThat(Body.of(prism(0, 0, 0, 2, 1, 0)).convex()).isTrue();
  }

  /** Which way a side faces is the drawer's affair. */
  @Test
  void aBoxWithASideTurnedOverIsConvex() {
    List<Face> box = prism(0, 0, 0, 2, 1, 2, 1, 0);
    List<Vec3> back = new ArrayList<>(box.get(0).corners());
    java.util.Collections.reverse(back);
    box.set(0, FleckShapes.face(back));
    assertThat(Body.of(box).convex()).isTrue();
  }

  @Test
  void anElbowIsNotConvex() {
    assertThat(Body.of(prism(0, 0, 0, 2, 1, 2, 1, 1, 2, 1, 2, 0)).convex()).isFalse();
  }

  @Test
  void twoBoxesAreNotConvex() {
    List<Face> both = prism(0, 0, 0, 2, 1, 2, 1, 0);
    both.addAll(prism(2, 0, 2, 2, 3, 2, 3, 0));
    assertThat(Body.of(both).convex()).isFalse();
  }

  @Test
  void whatIsOpenIsNotConvex() {
    List<Face> box = prism(0, 0, 0, 2, 1, 2, 1, 0);
    for (int left = 0; left < box.size(); left++) {
      List<Face> open = new ArrayList<>(box);
      open.remove(left);
      assertThat(Body.of(open).convex()).isFalse();
    }
    List<Face> ends = box.subList(4, 6);
    assertThat(Body.of(ends).convex()).isFalse();
    assertThat(Body.of(box.subList(0, 1)).convex()).isFalse();
  }

  /** Three metres from west to east; its end by y and z of each corner in turn. */
  private static List<Face> prism(double... yz) {
    List<Vec3> end = new ArrayList<>();
    for (int i = 0; i < yz.length; i += 2) {
      end.add(new Vec3(0, yz[i], yz[i + 1]));
    }
    return FleckShapes.prism(end, EAST_3);
  }
}
