import type { DocumentKind, DocumentOf } from '@icewright/book';
import { documentOf } from './book.ts';

/** The document once it has been read; null when it cannot be. */
export function documentWhenRead<Kind extends DocumentKind>(
  kind: Kind,
  id: string,
): Promise<DocumentOf<Kind> | null> {
  const document = documentOf(id);
  return new Promise(resolve => {
    const look = (): boolean => {
      const view = document.view();
      if (view.state === 'loading') return false;
      resolve(view.state === 'ready' && view.value.kind === kind ? (view.value as DocumentOf<Kind>) : null);
      return true;
    };
    if (look()) return;
    const stop = document.subscribe(() => {
      if (look()) stop();
    });
  });
}
