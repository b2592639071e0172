package wallchart.architecture.planted.web;

import com.lowagie.text.Document;
import io.nayuki.qrcodegen.QrCode;

/** Planted: a page that writes PDF and a square code by itself. The architecture test must notice both. */
public final class DrawsSheets {

    public boolean draw(Document document) {
        document.open();
        return QrCode.encodeText("sheet", QrCode.Ecc.LOW).getModule(0, 0);
    }
}
