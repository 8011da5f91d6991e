package farwatt.window.bench;

import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Something that is made when it is first asked for, so that the window need not wait for it. For one thread. */
public final class Late<T> implements Supplier<T> {
    private final Supplier<T> maker;
    private @Nullable T made;

    public Late(Supplier<T> maker) {
        this.maker = maker;
    }

    @Override
    public T get() {
        T there = made;
        if (there == null) {
            there = maker.get();
            made = there;
        }
        return there;
    }

    /** Does something with it where it was made already. */
    public void ifMade(Consumer<T> action) {
        T there = made;
        if (there != null) {
            action.accept(there);
        }
    }
}
