import '@fontsource-variable/encode-sans/standard.css';
import '@fontsource-variable/newsreader/wght.css';
import '../parts/tokens.css';
import '../parts/look.css';
import '../parts/strip.css';
import '../parts/acts.css';
import '../parts/reading.css';
import '../parts/ice.css';
import '../parts/parts.css';
import '../parts/fields.css';
import './handout.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { PlayerPage } from './player-page.tsx';

const root = document.getElementById('root');
if (root === null) throw new Error('handout.html has no element with the id "root"');
createRoot(root).render(
  <StrictMode>
    <PlayerPage />
  </StrictMode>,
);
