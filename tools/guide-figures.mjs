// The figures of the guides, drawn by the built library from a request of the examples whenever the documentation is
// built: a guide says `<figure data-draw="stairs" data-request="takeoff-28">` and brings the caption.
import fs from 'node:fs';

const marks = /<figure data-draw="([^"]+)" data-request="([^"]+)">([\s\S]*?)<\/figure>/g;

/**
 * A page with its figures drawn; text and figures come from the same request.
 * @param {string} html
 * @returns {Promise<string>}
 */
export async function withFigures(html) {
  if (!html.includes('data-draw=')) return html;
  const { assessLanding, assessTakeoff } = await import('groundroll');
  const { gradientsFigure, stairsFigure, windRulersFigure } = await import('groundroll/worksheet');
  const figures = { stairs: stairsFigure, gradients: gradientsFigure, 'wind-rulers': windRulersFigure };
  return html.replace(marks, (_, kind, name, caption) => {
    const request = readRequest(name);
    const assessed = (request.schema.includes('takeoff') ? assessTakeoff : assessLanding)(request);
    const drawing = assessed.ok ? figures[kind]?.(assessed.value) : undefined;
    if (drawing === undefined) throw new Error(`no figure "${kind}" of the request ${name}`);
    return `<figure class="drawn">${drawing}${caption}</figure>`;
  });
}

function readRequest(name) {
  const folder = 'examples/requests/';
  const request = JSON.parse(fs.readFileSync(`${folder}${name}.json`, 'utf8'));
  const data = JSON.parse(fs.readFileSync(folder + request.performanceData, 'utf8'));
  return { ...request, performanceData: data };
}
