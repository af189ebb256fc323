import '@fontsource-variable/encode-sans/standard.css';
import '@fontsource-variable/newsreader/wght.css';
import './parts/tokens.css';
import './parts/look.css';
import './parts/strip.css';
import './parts/acts.css';
import './parts/reading.css';
import './parts/ice.css';
import './parts/parts.css';
import './parts/fields.css';
import './parts/choices.css';
import './parts/sloping-words.css';
import './parts/forced-colors.css';
import './shell/first-start.css';
import './shell/shell.css';
import './shell/team-page.css';
import './shell/figures-page.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { Frame } from './shell/frame.tsx';

const root = document.getElementById('root');
if (root === null) throw new Error('index.html has no element with the id "root"');
createRoot(root).render(
  <StrictMode>
    <Frame />
  </StrictMode>,
);
