package wallchart.architecture.planted.quantity;

import wallchart.architecture.planted.web.Page;

/** Planted: a quantity that uses a page. The architecture test must notice. */
public record LooksDown(Page page) {}
