import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import { Sentence } from './sentence.tsx';

it('keeps the stop and the arrow of a slot on the line of its last word', () => {
  const written = renderToStaticMarkup(
    createElement(Sentence, {
      slots: {},
      // biome-ignore lint/correctness/noChildrenProp: it is a function here, and no element
      children: slot => slot('want', 'the middle is held', false, '.'),
    }),
  );
  // What must not be parted is one element that does not wrap, and the arrow is drawn behind it.
  expect(written).toMatch(
    /the middle is <span class="slot-last">held<span aria-hidden="true">\.<\/span><\/span><\/button>/,
  );
});
