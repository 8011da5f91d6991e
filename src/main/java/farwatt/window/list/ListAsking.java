package farwatt.window.list;

import java.nio.file.Path;
import java.util.Optional;

/** What is asked in between while a list is taken in. Each question may be left unanswered. */
public interface ListAsking {
    /** Which file holds a kept mapping. */
    Optional<Path> mapping();

    /** Where to keep a mapping. */
    Optional<Path> place(String suggested);

    /** Under which name the plan keeps a mapping. */
    Optional<String> name(String suggested);
}
