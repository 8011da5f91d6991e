package farwatt.window.grid;

/** The grid without its screen: the model and all that can be done to it. */
record Parts(
        GridModel model,
        BlockWork block,
        RowWork rows,
        ColumnWork columns,
        Editing editing,
        Search search,
        Board board) {
    static Parts of(Sheet sheet, Board board) {
        GridModel model = new GridModel(sheet);
        CellWork cells = new CellWork(model);
        return new Parts(
                model,
                new BlockWork(model, cells),
                new RowWork(model),
                new ColumnWork(model),
                new Editing(model, cells),
                new Search(model, cells),
                board);
    }
}
