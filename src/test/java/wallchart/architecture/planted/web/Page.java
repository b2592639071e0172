package wallchart.architecture.planted.web;

/** Planted: something above. */
public record Page(String title) {}
