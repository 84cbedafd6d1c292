import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sentenceHtml, textHtml, textMarkdown } from '../../src/worksheet/markup.ts';

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

describe('textMarkdown', () => {
  it('leaves no markup within a text, of Markdown, of HTML and of mathematics', () => {
    expect(textMarkdown('<script>alert(1)</script>')).toBe('&lt;script>alert(1)&lt;/script>');
    expect(textMarkdown('*a* `b` ~~c~~ $d$ \\e _f_')).toBe('\\*a\\* \\`b\\` \\~\\~c\\~\\~ \\$d\\$ \\\\e \\_f\\_');
    expect(textMarkdown('a [b](c) ![d][e] [f]: g')).toBe('a [b\\](c) ![d\\][e] [f\\]: g');
    expect(textMarkdown('&lt; &#42; & so')).toBe('&amp;lt; &amp;#42; & so');
  });

  it('begins no block, and stays on one line', () => {
    for (const [text, expected] of [
      ['# a', '\\# a'],
      ['- a', '\\- a'],
      ['---', '\\---'],
      ['> a', '\\> a'],
      ['[x] a', '\\[x] a'],
      ['1. a', '1\\. a'],
      ['2) a', '2\\) a'],
      ['a #', 'a \\#'],
      ['a\n\n# b\r\nc', 'a # b c'],
    ] as const)
      expect(textMarkdown(text), text).toBe(expected);
  });

  it('leaves words and figures of a worksheet as they are', () => {
    for (const text of ['0.2 V_S0 is 8.8 kt', 'values [300, 325]', '-4 kt', '771 m of 830 m: 59 m to spare, #1 & 2'])
      expect(textMarkdown(text)).toBe(text);
  });
});

describe('a sentence on a page', () => {
  it('keeps numbers with their units, and shows what multiplies and what stands low', () => {
    expect(sentenceHtml('771 m of 1 095 ft, 12 %, 26 °C')).toBe('771\u00a0m of 1 095\u00a0ft, 12\u00a0%, 26\u00a0°C');
    expect(sentenceHtml('soil x 1.20, 1.15 x distance')).toBe('soil \u00d7\u00a01.20, 1.15 \u00d7\u00a0distance');
    expect(sentenceHtml('0.2 V_S0 <')).toBe('0.2 V<sub>S0</sub> &lt;');
  });
});
