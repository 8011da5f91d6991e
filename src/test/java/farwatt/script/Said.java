package farwatt.script;

import java.util.ArrayList;
import java.util.List;

/** Everything that a run said. */
final class Said implements ScriptListener {
    final List<String> printed = new ArrayList<>();
    final List<ResultTable> tables = new ArrayList<>();
    final List<ResultPicture> pictures = new ArrayList<>();
    final List<String> saved = new ArrayList<>();
    final List<String> progress = new ArrayList<>();

    @Override
    public void print(String text) {
        printed.add(text);
    }

    @Override
    public void table(ResultTable table) {
        tables.add(table);
    }

    @Override
    public void picture(ResultPicture picture) {
        pictures.add(picture);
    }

    @Override
    public void save(String name, ResultTable table) {
        saved.add(name);
        tables.add(table);
    }

    @Override
    public void progress(double share, String what) {
        progress.add(what);
    }
}
