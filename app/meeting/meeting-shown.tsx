import '../film/picture.css';
import './run/run.css';

/** The audience's window, without the frame of the workbench. */
export { ShowPage as MeetingShown } from './run/show-page.tsx';
