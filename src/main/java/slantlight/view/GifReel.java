package slantlight.view;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOInvalidTreeException;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;
import slantlight.view.gl.Pixels;

/** An animated GIF that loops for ever: small and shown everywhere, but of 256 colours. */
final class GifReel implements Reel {
  private static final String FORMAT = "javax_imageio_gif_image_1.0";
  private final Path out;
  private final Path part;
  private final int millis;
  private final ImageWriter writer = ImageIO.getImageWritersByFormatName("gif").next();
  private final ImageOutputStream stream;

  GifReel(Path out, int millis) throws IOException {
    this.out = out;
    this.millis = millis;
    Path folder = out.toAbsolutePath().getParent();
    Files.createDirectories(folder);
    part = folder.resolve("." + out.getFileName() + ".part");
    Files.deleteIfExists(part);
    stream = ImageIO.createImageOutputStream(part.toFile());
    writer.setOutput(stream);
    writer.prepareWriteSequence(null);
  }

  @Override
  public void add(Pixels frame) throws IOException {
    BufferedImage image = frame.image();
    IIOMetadata data =
        writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), null);
    describe(data);
    writer.writeToSequence(new IIOImage(image, null, data), null);
  }

  private void describe(IIOMetadata data) throws IIOInvalidTreeException {
    IIOMetadataNode root = new IIOMetadataNode(FORMAT);
    IIOMetadataNode control = new IIOMetadataNode("GraphicControlExtension");
    control.setAttribute("disposalMethod", "none");
    control.setAttribute("userInputFlag", "FALSE");
    control.setAttribute("transparentColorFlag", "FALSE");
    control.setAttribute("transparentColorIndex", "0");
    control.setAttribute("delayTime", String.valueOf(Math.max(2, millis / 10)));
    IIOMetadataNode extensions = new IIOMetadataNode("ApplicationExtensions");
    IIOMetadataNode loop = new IIOMetadataNode("ApplicationExtension");
    loop.setAttribute("applicationID", "NETSCAPE");
    loop.setAttribute("authenticationCode", "2.0");
    loop.setUserObject(new byte[] {1, 0, 0});
    extensions.appendChild(loop);
    root.appendChild(control);
    root.appendChild(extensions);
    data.mergeTree(FORMAT, root);
  }

  @Override
  public void finish() throws IOException {
    writer.endWriteSequence();
    stream.close();
    Files.move(part, out, StandardCopyOption.REPLACE_EXISTING);
  }

  @Override
  public void close() throws IOException {
    writer.dispose();
    Files.deleteIfExists(part);
  }
}
