package farwatt.language;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearTest {
    private static final List<String> KNOWN =
            List.of("draw", "load", "reserve_share", "reserve", "cam 1", "cam 2", "length", "K");

    @ParameterizedTest
    @CsvSource({
        "drwa,draw", "drw,draw", "Draw,draw", "draww,draw", "lod,load", "reserveshare,reserve_share", "resrve,reserve",
        "reserve share,reserve_share", "cam1,cam 1", "lenght,length", "lngth,length", "k,K", "cam,cam 1",
                "res,reserve_share",
        "x,", "xyz,", "d,", "re,", "loss_share_of_all_the_runs,"
    })
    void findsTheNearestNameOrNone(String typed, String expected) {
        assertEquals(Optional.ofNullable(expected), Near.best(typed, KNOWN));
    }
}
