package slantlight.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.lwjgl.opengl.GL11C;
import slantlight.view.draw.Box;
import slantlight.view.draw.Canvas;
import slantlight.view.draw.Palette;
import slantlight.view.draw.Type;
import slantlight.view.gl.GlContext;
import slantlight.view.gl.Offscreen;
import slantlight.view.gl.Pixels;
import slantlight.view.gl.Target;

class CanvasTest {
  @Test
  void drawsTypeAndBoxesInMemory() throws Exception {
    try (GlContext gl = Offscreen.open(Offscreen.Way.SOFTWARE);
        Canvas canvas = new Canvas();
        Target target = new Target(640, 200, 4)) {
      target.bind();
      GL11C.glClearColor(1, 1, 1, 1);
      GL11C.glClear(GL11C.GL_COLOR_BUFFER_BIT | GL11C.GL_STENCIL_BUFFER_BIT);
      canvas.begin(640, 200, 1);
      canvas.fill(new Box(0, 0, 320, 200), Palette.ACCENT);
      canvas.text(
          new Box(330, 20, 300, 40),
          Type.strong(28),
          Canvas.Align.LEFT,
          "Slant 14:35 é 12° × 0123456789");
      canvas.text(
          new Box(330, 70, 300, 40),
          Type.plain(14),
          Canvas.Align.LEFT,
          "1111 0000 – “—” · → ≥ m² ½");
      canvas.end();
      Pixels p = target.read();
      gl.check();
      System.out.println(gl.renderer());
      p.write(Path.of("target/view/canvas.png"));
      assertThat(p.at(100, 100)).isEqualTo(Palette.ACCENT);
      assertThat(p.at(639, 199)).isEqualTo(0xffffff);
    }
  }
}
