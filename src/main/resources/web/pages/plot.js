// Curves by uPlot (MIT). A canvas says nothing to a screen reader, so whoever draws one puts the same numbers in a table beside it.

let library = null;

/** Loads the library when the first plot is wanted. */
function loaded() {
  library ??= new Promise((done, failed) => {
    document.head.append(Object.assign(document.createElement('link'), { rel: 'stylesheet', href: '/pages/uplot.css' }));
    const script = Object.assign(document.createElement('script'), { src: '/pages/uplot.js' });
    script.onload = () => done(window.uPlot);
    script.onerror = () => failed(new Error('the plotting library did not load: reload the page'));
    document.head.append(script);
  });
  return library;
}

const ink = (name) => getComputedStyle(document.documentElement).getPropertyValue(`--${name}`).trim();

/**
 * Draws into an element, anew when the theme changes or the element grows; returns a function that takes the plot away.
 * `describe(uPlot, ink)` gives `{options, data}` of uPlot without width; colours come from `ink('plot-1')` and the like.
 */
export async function plot(element, describe, height = 280) {
  const uPlot = await loaded();
  let drawn = null;
  const draw = () => {
    drawn?.destroy();
    const { options, data } = describe(uPlot, ink);
    const axis = { stroke: ink('ink'), grid: { stroke: ink('hair') }, ticks: { stroke: ink('rule') } };
    options.axes = (options.axes ?? [{}, {}]).map((own) => ({ ...axis, ...own }));
    drawn = new uPlot({ width: Math.max(280, element.clientWidth), height, ...options }, data, element);
  };
  draw();
  const resized = new ResizeObserver(() => drawn.setSize({ width: Math.max(280, element.clientWidth), height }));
  resized.observe(element);
  window.addEventListener('themechange', draw);
  return () => {
    resized.disconnect();
    window.removeEventListener('themechange', draw);
    drawn.destroy();
  };
}
