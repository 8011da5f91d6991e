package farwatt.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Row;
import farwatt.report.Cancel;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What customers' lists look like besides the tidy ones. */
class MessyListsTest {
    @TempDir
    Path folder;

    private Outcome bytes(String text, String set) throws Exception {
        Path file = folder.resolve("list");
        Files.write(file, text.getBytes(Charset.forName(set)));
        return Intake.read(file, Wishes.NONE, new Cancel());
    }

    private static Meaning meaning(Outcome outcome, String heading) {
        return outcome.columns().stream()
                .filter(c -> c.heading().equals(heading))
                .findFirst()
                .orElseThrow()
                .meaning();
    }

    @Test
    void aGermanScheduleWithTitleRowsGapsAndTotal() throws Exception {
        Outcome outcome = Lists.paste("""
                Museum courtyard;;
                As of 12.03.2025;;;;

                Pos.;Bezeichnung;Art;Bereich;Stk.;Leistung [W];Kabel;Länge;Switch / Port;Bemerkung
                1;Hofkamera;Kamera;Hof;2;7,5;Cat6A;34;SW-H1 / 3;
                2;Türsprechstelle;Sprechstelle;;1;max. 9 W;Cat6A;45 m;SW-H1 / 4;Anstrich abwarten
                3;Funk Galerie;Funk;Galerie;1;6–8 W;Cat6A;ca. 60 m;;
                4;Anzeige;;;1;typ. 11 W, max. 19,5 W;;30+5;;
                Summe;;;;5;;;;;
                Alle Angaben ohne Gewähr
                """);
        assertEquals(
                List.of("Hofkamera 1", "Hofkamera 2", "Türsprechstelle", "Funk Galerie", "Anzeige"),
                Lists.ids(outcome.devices()));
        assertEquals(List.of("7.5 W", "7.5 W", "9 W", "8 W", "19.5 W"), Lists.cells(outcome.devices(), "draw"));
        assertEquals("11 W", outcome.devices().get(4).text("draw_typical"));
        assertEquals(List.of("Hof", "Hof", "Hof", "Galerie", "Galerie"), Lists.cells(outcome.devices(), "zone"));
        assertEquals(List.of("34 m", "34 m", "45 m", "60 m", "35 m"), Lists.cells(outcome.runs(), "length"));
        assertEquals(List.of("SW-H1", "SW-H1", "SW-H1", "", ""), Lists.cells(outcome.runs(), "from"));
        assertEquals(List.of("3", "", "4", "", ""), Lists.cells(outcome.runs(), "port"));
        assertEquals("6A", outcome.runs().get(0).text("category"));
        assertEquals(Meaning.INDEX, meaning(outcome, "Pos."));
        assertEquals("fill:Bereich", outcome.questions().get(0).key());
        assertEquals(5, outcome.count(RowState.LEFT_OUT));
        assertTrue(outcome.totals().stream().allMatch(TotalsCheck::agrees));
    }

    @Test
    void feetMarksClassesAndPortsThatBecameDates() throws Exception {
        Outcome outcome = Lists.paste("Device\tPower draw\tPoE class\tDistance (ft)\tFed from\tPort #\n"
                + "cam A\t5.5W\t3\t120\tShed switch\t1\n"
                + "cam B\t5.5W\t3\t150'\tShed switch\tport 4\n"
                + "display\t~14 W\tClass 4\t1,100\tShed switch\t2-Jan\n"
                + "sensor\t0\t2\t5 ft 3 in\tShed switch\t0/5");
        assertEquals(List.of("120 ft", "150 ft", "1100 ft", "5 ft 3 in"), Lists.cells(outcome.runs(), "length"));
        assertEquals(List.of("1", "4", "", "5"), Lists.cells(outcome.runs(), "port"));
        assertEquals(List.of("3", "3", "4", "2"), Lists.cells(outcome.devices(), "class"));
        assertTrue(Lists.line(outcome, "line 4").codes().contains("intake.date_for_port"));
        assertTrue(Lists.line(outcome, "line 5").codes().contains("intake.zero_watts"));
    }

    @Test
    void tablesOfBarsAndColumnsOfBlanks() throws Exception {
        Outcome bars = Lists.paste("| Name | W | m |\n|------|---|---|\n| cam | 6 | 20 |\n| horn | 3 | 10 |\n");
        assertEquals(List.of("6 W", "3 W"), Lists.cells(bars.devices(), "draw"));
        assertEquals("intake.out_rule", Lists.line(bars, "line 2").codes().get(0));
        Outcome blanks =
                Lists.paste("Name         Power    Length\nGate cam     6.5 W    30 m\nPier horn    3 W      12 m\n");
        assertEquals(List.of("Gate cam", "Pier horn"), Lists.ids(blanks.devices()));
        assertEquals(List.of("30 m", "12 m"), Lists.cells(blanks.runs(), "length"));
    }

    @Test
    void withoutAHeadingTheContentTells() throws Exception {
        Outcome outcome = Lists.paste("cam north,6.5 W,30 m\ncam south,7 W,45 m\nhorn,3 W,12 m");
        assertEquals(List.of("cam north", "cam south", "horn"), Lists.ids(outcome.devices()));
        assertEquals(List.of("6.5 W", "7 W", "3 W"), Lists.cells(outcome.devices(), "draw"));
        assertEquals(List.of("30 m", "45 m", "12 m"), Lists.cells(outcome.runs(), "length"));
        assertTrue(outcome.notices().stream().anyMatch(n -> n.code().equals("intake.no_heading")));
    }

    @Test
    void groupsRepeatedHeadingsAndTotalsWithoutAWord() throws Exception {
        Outcome outcome = Lists.paste("Name,Power,Length\nPier:,,\ncam 1,6.5,20\ncam 2,6.5,25\nHall,,\nap 1,12,30\n"
                + "Name,Power,Length\nlamp,4.5,8\n,29.5,83\n");
        assertEquals(List.of("Pier", "Pier", "Hall", "Hall"), Lists.cells(outcome.devices(), "zone"));
        assertEquals("intake.out_section", Lists.line(outcome, "line 5").codes().get(0));
        assertEquals(
                "intake.out_heading_again",
                Lists.line(outcome, "line 7").codes().get(0));
        assertEquals("intake.out_sum", Lists.line(outcome, "line 9").codes().get(0));
        assertEquals(0, outcome.count(RowState.HELD_BACK));
    }

    @Test
    void aDeviceThatMerelyHasTotalInItsNameStays() throws Exception {
        Outcome outcome =
                Lists.paste("Area,Name,Qty,W\nYard,Total station,1,6\nYard,Sum display,2,4\nSubtotal Yard,,3,14\n"
                        + "Hall,lamp,1,5\nTotal,,4,20");
        assertEquals(List.of("Total station", "Sum display 1", "Sum display 2", "lamp"), Lists.ids(outcome.devices()));
        assertEquals(4, outcome.totals().size());
        TotalsCheck wrong = outcome.totals().get(3);
        assertEquals(List.of("20", "19"), List.of(wrong.stated(), wrong.found()));
        assertEquals(
                List.of(true, true, true, false),
                outcome.totals().stream().map(TotalsCheck::agrees).toList());
    }

    @Test
    void strayQuotesAreInchMarks() throws Exception {
        Outcome outcome = Lists.paste(
                "Name,Note,Power\n5\" pipe cam,\"He said \"\"hello\"\"\",6\nlamp 12\",\",\",4\n\"open lamp,x,5\n");
        assertEquals(List.of("5\" pipe cam", "lamp 12\"", "\"open lamp"), Lists.ids(outcome.devices()));
        assertEquals(List.of("He said \"hello\"", ",", "x"), Lists.cells(outcome.devices(), "note"));
    }

    @Test
    void eightBitSetsAreToldApartByTheirWords() throws Exception {
        String polish = "Nazwa;Moc W;Długość m\nKamera wejście;6,5;30\nGłośnik żółty;3;12\n";
        for (String set : List.of("windows-1250", "ISO-8859-2", "UTF-8", "UTF-16")) {
            Outcome outcome = bytes(polish, set);
            assertEquals(List.of("Kamera wejście", "Głośnik żółty"), Lists.ids(outcome.devices()), set);
        }
        Outcome french = bytes("Nom;Puissance (W)\nCaméra entrée;6,5\n", "windows-1252");
        assertEquals(List.of("Caméra entrée"), Lists.ids(french.devices()));
        assertEquals("encoding", french.questions().get(0).key());
    }

    @Test
    void loadsBehindConvertersAndCordsBesideRuns() throws Exception {
        String list = "Item,Load (W),Converter efficiency,Fixed cable (m),Patch cords (m),Max temp (°C),Bitrate,IP\n"
                + "sign A,15,85 %,60,4,50,8 Mbit/s,IP66\nsign B,20,0.9,70,5.5,55,12,IP54\n";
        Outcome outcome = Lists.paste(list);
        Row sign = outcome.devices().get(0);
        assertEquals(
                List.of("15 W", "85 %", "", "8 Mb/s", "50 degC", "IP66"),
                List.of(
                        sign.text("load"),
                        sign.text("load_efficiency"),
                        sign.text("draw"),
                        sign.text("bitrate"),
                        sign.text("hottest_rated"),
                        sign.text("ingress")));
        assertEquals("90 %", outcome.devices().get(1).text("load_efficiency"));
        assertEquals(List.of("64 m", "75.5 m"), Lists.cells(outcome.runs(), "length"));
        assertEquals(List.of("4 m", "5.5 m"), Lists.cells(outcome.runs(), "cord_length"));
        assertTrue(outcome.questions().stream().anyMatch(q -> q.key().equals("watts_at")));
        Mapping before = Mapping.NONE.withAnswer("watts_at", "network input");
        assertEquals(
                List.of("15 W", "20 W"),
                Lists.cells(Lists.paste(list, Wishes.NONE.with(before)).devices(), "draw"));
    }

    @Test
    void headingsWithVoltsTotalsAndModes() throws Exception {
        Outcome amps = Lists.paste("Name,Current mA @ 48 V,Distance m\ncam,270,30\nlamp,0.1 A,22");
        assertEquals(List.of("12.96 W", "4.8 W"), Lists.cells(amps.devices(), "draw"));
        Outcome total = Lists.paste("Device,Qty,Total power (W)\ncam,3,19.5\nhorn,2,6");
        assertEquals(List.of("6.5 W", "6.5 W", "6.5 W", "3 W", "3 W"), Lists.cells(total.devices(), "draw"));
        Outcome both = Lists.paste("Device,Qty,Power each (W),Total power (W)\ncam,3,6.5,19.5\nhorn,2,3,6");
        assertEquals(List.of("6.5 W", "6.5 W", "6.5 W", "3 W", "3 W"), Lists.cells(both.devices(), "draw"));
        Outcome modes = Lists.paste("Device,Power typ/max (W)\ncam,6/8\nhorn,3");
        assertEquals(List.of("8 W", "3 W"), Lists.cells(modes.devices(), "draw"));
        Outcome usual = Lists.paste("Device,Typical power (W)\ncam,6");
        assertEquals("6 W", usual.devices().get(0).text("draw"));
        assertEquals(List.of("intake.typical_only"), usual.report().get(1).codes());
    }

    @Test
    void aSecondTableBelowIsNotTakenForDevices() throws Exception {
        Outcome outcome = Lists.paste(
                "Device,Power (W),m\ncam,6,30\nhorn,3,12\nTotal,,42\n\nCable,Length,Count\nCat6,305 m,3\nCat6A,305 m,1");
        assertEquals(List.of("cam", "horn"), Lists.ids(outcome.devices()));
        assertEquals("intake.out_no_list", Lists.line(outcome, "line 7").codes().get(0));
        assertEquals("sheet:line 6", outcome.questions().get(0).key());
    }

    @Test
    void whatFeedsOtherRowsIsASwitch() throws Exception {
        Outcome outcome = Lists.paste("Name,Kind,PoE,Distance,Fed from,Port,Qty,Serial\n"
                + "Shed switch,switch,802.3bt,80 m,office feed,1,1,SS1\n"
                + "cam,camera,Class 3,20,shed switch,1-3,3,A1/A2/A3\n"
                + "horn,horn,Class 2,12 m,Shed-Switch,4,2,B9\n");
        assertEquals(List.of("Shed switch"), Lists.ids(outcome.switches()));
        assertEquals("6", outcome.switches().get(0).text("uplink_class"));
        assertEquals(List.of("cam 1", "cam 2", "cam 3", "horn 1", "horn 2"), Lists.ids(outcome.devices()));
        assertEquals(List.of("A1", "A2", "A3", "B9", ""), Lists.cells(outcome.devices(), "serial"));
        assertEquals(List.of("1", "1", "2", "3", "4", ""), Lists.cells(outcome.runs(), "port"));
        assertEquals("Shed switch", outcome.runs().get(0).text("to"));
    }

    @Test
    void ambiguousMarksAreAskedAndAnswered() throws Exception {
        String list = "Name;Length (ft);W\ncam;1,100;6\nhorn;2,300;3";
        Outcome open = Lists.paste(list);
        assertEquals(2, open.count(RowState.HELD_BACK));
        Question question = open.questions().get(0);
        assertEquals("decimal:Length (ft)", question.key());
        Mapping point = Mapping.NONE.withAnswer(question.key(), "point");
        assertEquals(
                List.of("1100 ft", "2300 ft"),
                Lists.cells(Lists.paste(list, Wishes.NONE.with(point)).runs(), "length"));
        Outcome second = Lists.paste("Name;W\ncam;6 W / 1.234 W\nhorn;3");
        assertEquals(List.of("intake.ambiguous"), Lists.line(second, "line 2").codes());
        Outcome plausible = Lists.paste("Name;W\ncam;6,125\nhorn;3");
        assertEquals("6.125 W", plausible.devices().get(0).text("draw"));
        assertEquals(
                List.of("intake.plausible"), Lists.line(plausible, "line 2").codes());
    }

    @Test
    void mendedCellsAndKeptMappings() throws Exception {
        String list = "Thing,Juice,Span\ncam,6,20\nhorn,13d,10";
        Mapping mapping = Mapping.NONE
                .withColumn("Thing", Meaning.NAME)
                .withColumn("juice", Meaning.WATTS)
                .withColumn("Span", Meaning.LENGTH);
        Outcome outcome = Lists.paste(list, Wishes.NONE.with(mapping));
        assertEquals(List.of("cam"), Lists.ids(outcome.devices()));
        Wishes mended = Wishes.NONE.with(outcome.mappingUsed()).mended("line 3", "Juice", "13");
        Outcome again = Lists.paste(list, mended);
        assertEquals(List.of("6 W", "13 W"), Lists.cells(again.devices(), "draw"));
        assertEquals(List.of("20 m", "10 m"), Lists.cells(again.runs(), "length"));
        assertEquals("unit:Span", again.questions().get(0).key());
        Outcome feet = Lists.paste(list, mended.with(outcome.mappingUsed().withAnswer("unit:Span", "ft")));
        assertEquals(List.of("20 ft", "10 ft"), Lists.cells(feet.runs(), "length"));
    }

    @Test
    void sameNamesElsewhereAndNamesThatArePlaces() throws Exception {
        Outcome outcome = Lists.paste("Name,W,Area\nCam,6,Pier\nCam,6,Hall\nCam,6,Pier\nPier,3,Hall\ncam 1-3,5,Yard");
        assertEquals(List.of("Cam", "Cam (Hall)", "Cam 1", "Pier", "cam 1-3"), Lists.ids(outcome.devices()));
        assertEquals(List.of("Pier (place)", "Hall", "Yard"), Lists.ids(outcome.zones()));
        assertEquals("Pier (place)", outcome.devices().get(0).text("zone"));
        Outcome spans = Lists.paste("Name,Qty,W\ncam 4-6,3,5\nlamp 7,2,5");
        assertEquals(List.of("cam 4", "cam 5", "cam 6", "lamp 7", "lamp 8"), Lists.ids(spans.devices()));
    }

    @Test
    void wordsOfHeadingsThatEndInAUnitsLetterAreNoUnits() throws Exception {
        Outcome outcome = Lists.paste("Equipamento;Consumo (W);Ligado a\nCâmara;6,5;SW-A\nAltifalante;3;SW-A");
        assertEquals(Meaning.FEEDER, meaning(outcome, "Ligado a"));
        assertEquals(List.of("SW-A", "SW-A"), Lists.cells(outcome.runs(), "from"));
        Outcome units = Lists.paste("Device,Qty,W total,W each\ncam,3,19.5,6.5\nhorn,1,3,3\nTotal,4,22.5,");
        assertEquals(List.of("6.5 W", "6.5 W", "6.5 W", "3 W"), Lists.cells(units.devices(), "draw"));
        assertTrue(units.totals().stream().allMatch(TotalsCheck::agrees));
    }

    @Test
    void numbersThatDoNotFollowEachOtherAreNamedOneByOne() throws Exception {
        Outcome outcome = Lists.paste("Tag,W,Qty\nC1,6,2\nC2,4,1\nC3,4,1");
        assertEquals("2 devices: C1, C4.", Lists.line(outcome, "line 2").said());
    }

    @Test
    void theOrchardsListIsTakenWhole() throws Exception {
        Path list = Path.of(System.getProperty("farwatt.root", "."), "scenarios", "orchard-devices.csv");
        Outcome outcome = Intake.read(list, Wishes.NONE, new Cancel());
        assertEquals(24, outcome.devices().size());
        assertEquals(24, outcome.runs().size());
        assertEquals(0, outcome.count(RowState.HELD_BACK));
        assertEquals(1, outcome.count(RowState.LEFT_OUT));
    }
}
