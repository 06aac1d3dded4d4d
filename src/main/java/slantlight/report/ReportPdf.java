package slantlight.report;

import com.openhtmltopdf.extend.FSSupplier;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.TimeZone;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;

/**
 * The report as PDF. The same report gives the same bytes: dates are fixed and the file's id is
 * made from its content.
 */
final class ReportPdf {
  private ReportPdf() {}

  /** Writes the report; {@code out} stays open. */
  static void write(ReportData data, PrintedSheets printed, OutputStream out) throws IOException {
    XRLog.setLoggingEnabled(false);
    String page = ReportPage.forPaper(data, printed);
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.useFastMode();
    builder.useSVGDrawer(new BatikSVGDrawer());
    builder.useUnicodeBidiReorderer(new LineReorderer());
    builder.useUnicodeBidiSplitter(new LineSplitter.Factory());
    builder.defaultTextDirection(PdfRendererBuilder.TextDirection.LTR);
    builder.useFont(font("Barlow-Regular"), "Barlow", 400, FontStyle.NORMAL, true);
    builder.useFont(font("Barlow-SemiBold"), "Barlow", 600, FontStyle.NORMAL, true);
    builder.useFont(font("DejaVuSans"), "Wide", 400, FontStyle.NORMAL, true);
    builder.withHtmlContent(page, null);
    builder.withProducer("Slantlight " + data.made().version());
    try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
      renderer.layout();
      renderer.createPDFWithoutClosing();
      PDDocument document = renderer.getPdfDocument();
      PDDocumentInformation info = document.getDocumentInformation();
      Calendar epoch = new GregorianCalendar(TimeZone.getTimeZone("UTC"));
      epoch.setTimeInMillis(0);
      info.setCreationDate(epoch);
      info.setModificationDate(epoch);
      document.setDocumentId(idOf(page));
      document.save(out);
    }
  }

  private static FSSupplier<InputStream> font(String name) {
    return () -> new ByteArrayInputStream(Resource.bytes("fonts/" + name + ".ttf"));
  }

  private static long idOf(String page) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256")
              .digest(page.getBytes(java.nio.charset.StandardCharsets.UTF_8));
      return ByteBuffer.wrap(digest).getLong();
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java runtime has SHA-256", e);
    }
  }
}
