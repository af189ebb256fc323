/** What a title card can say of a moment, in the order it stands there; the first that is there is set large. */
export const CARD_LINES = ['what', 'verdict', 'who', 'note', 'where'] as const;
export type CardLine = (typeof CARD_LINES)[number];

export const CARD_LINE_SAID: Readonly<Record<CardLine, string>> = {
  what: 'habit',
  verdict: 'verdict',
  who: 'name',
  note: 'note',
  where: 'game and time',
};

/** The words of one moment, by what they say; what is empty is not known. */
export type CardWords = Readonly<Record<CardLine, string>>;

/** The lines of a card: verdict and name share one. */
export const cardLinesOf = (words: CardWords, wanted: ReadonlySet<CardLine>): readonly string[] => {
  const said = (line: CardLine) => (wanted.has(line) ? words[line] : '');
  const seen = [said('verdict'), said('who')].filter(Boolean).join(', ');
  return [said('what'), seen, said('note'), said('where')].filter(Boolean);
};
