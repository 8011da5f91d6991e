package farwatt.intake;

/** What a file is by its content. Its name does not count. */
enum FileKind {
    TEXT(IntakeSays.READ_TEXT),
    XLSX(IntakeSays.READ_WORKBOOK),
    XLS(IntakeSays.READ_WORKBOOK),
    /** An OOXML workbook locked with a password. */
    LOCKED(IntakeSays.LOCKED),
    XLSB(IntakeSays.IS_XLSB),
    STRICT(IntakeSays.IS_STRICT),
    OPEN_DOCUMENT(IntakeSays.IS_OPEN_DOCUMENT),
    HTML(IntakeSays.IS_HTML),
    XML(IntakeSays.IS_XML),
    PDF(IntakeSays.IS_PDF),
    PICTURE(IntakeSays.IS_PICTURE),
    LETTER(IntakeSays.IS_LETTER),
    ARCHIVE(IntakeSays.IS_ARCHIVE),
    SWELLS(IntakeSays.SWELLS),
    DAMAGED(IntakeSays.DAMAGED),
    BINARY(IntakeSays.IS_BINARY);

    private final IntakeSays says;

    FileKind(IntakeSays says) {
        this.says = says;
    }

    /** What is said about a file of this kind: how it was read, or why it cannot be. */
    IntakeSays says() {
        return says;
    }

    boolean isRead() {
        return this == TEXT || this == XLSX || this == XLS || this == LOCKED;
    }
}
