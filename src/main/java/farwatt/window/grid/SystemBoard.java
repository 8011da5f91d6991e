package farwatt.window.grid;

import java.util.Optional;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;

/** The clipboard of the desktop. */
final class SystemBoard implements Board {
    @Override
    public Optional<String> text() {
        return Optional.ofNullable(Clipboard.getSystemClipboard().getString());
    }

    @Override
    public void put(String text) {
        ClipboardContent content = new ClipboardContent();
        content.putString(text);
        Clipboard.getSystemClipboard().setContent(content);
    }
}
