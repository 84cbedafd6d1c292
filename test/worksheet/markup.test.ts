import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sentenceHtml, textHtml } from '../../src/worksheet/markup.ts';

/** What a browser makes of it again. */
const read = (html: string) =>
  html
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&#39;/g, "'")
    .replace(/&amp;/g, '&');

describe('textHtml', () => {
  it('leaves no character that begins or ends markup, and loses none', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (text) => {
        const html = textHtml(text);
        expect(html).not.toMatch(/[<>"']/);
        expect(html).not.toMatch(/&(?!(?:lt|gt|quot|amp|#39);)/);
        expect([...read(html)]).toHaveLength([...text].length);
      }),
    );
    expect(textHtml(`<script>alert("1")</script> & 'so'`)).toBe(
      '&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt; &amp; &#39;so&#39;',
    );
  });

  it('replaces what neither HTML nor SVG can hold', () => {
    expect(textHtml('a\u0000b\u001bc\u0085d\ud800e\tf\n')).toBe('a\ufffdb\ufffdc\ufffdd\ufffde\tf\n');
  });
});

describe('a sentence on a page', () => {
  it('keeps numbers with their units, and shows what multiplies and what stands low', () => {
    expect(sentenceHtml('771 m of 1 095 ft, 12 %, 26 °C')).toBe('771\u00a0m of 1 095\u00a0ft, 12\u00a0%, 26\u00a0°C');
    expect(sentenceHtml('soil x 1.20, 1.15 x distance')).toBe('soil \u00d7\u00a01.20, 1.15 \u00d7\u00a0distance');
    expect(sentenceHtml('0.2 V_S0 <')).toBe('0.2 V<sub>S0</sub> &lt;');
  });
});
