import { drawNet } from '../ice/net.ts';
import { drawWaiting } from '../ice/spot.ts';
import { drawPucks, drawPylon } from '../ice/things.ts';
import { markSheet } from './mark-sheet.ts';
import { someone } from './scene-people.ts';

const NET = { facingRad: Math.PI, openingM: 1.83, depthM: 1.016 } as const;
const LINE_OF_US = { side: 'us', kind: 'skater', facingRad: 0, waitingCount: 5 } as const;
const LINE_OF_THEM = { side: 'them', kind: 'skater', facingRad: Math.PI, waitingCount: 4 } as const;

export default markSheet('Who and what', [
  {
    name: 'Us, them',
    says: 'filled disc, ring; the letter is the role in this play',
    draw: pen => {
      ['F1', 'D2', 'LW'].forEach((role, index) => {
        someone(pen, role, -5.8 + 2.3 * index, 0);
      });
      ['X1', 'X2', 'X3'].forEach((role, index) => {
        someone(pen, role, 1.7 + 2.3 * index, 0);
      });
    },
  },
  {
    name: 'Goalie, coach',
    says: 'half disc, flat side to the net; the word Co',
    draw: pen => {
      someone(pen, 'G', -5, 0, { kind: 'goalie' });
      someone(pen, 'G', -2.2, 0, { kind: 'goalie', side: 'them' });
      someone(pen, 'Co', 1.2, 0, { kind: 'coach' });
    },
  },
  {
    name: 'Pylon, puck, pucks',
    says: 'filled triangle; dot; heap',
    draw: pen => {
      drawPylon(pen, { xM: -4.6, yM: 0 });
      drawPylon(pen, { xM: -3.2, yM: 0 });
      drawPucks(pen, { xM: 0, yM: 0 }, 1);
      drawPucks(pen, { xM: 3.9, yM: 0 }, 12);
    },
  },
  {
    name: 'Net, moved net, small net',
    says: 'pale by the rules, dark where it was carried',
    draw: pen => {
      drawNet(pen, { ...NET, atM: { xM: -4, yM: 0 } }, 'net');
      drawNet(pen, { ...NET, atM: { xM: 0, yM: 0 } }, 'netMoved');
      drawNet(pen, { facingRad: Math.PI, openingM: 1.22, depthM: 0.68, atM: { xM: 4.4, yM: 0 } }, 'netMoved');
    },
  },
  {
    name: 'Line of skaters waiting',
    says: 'one spot, the others behind it, how many',
    draw: pen => {
      drawWaiting(pen, { ...LINE_OF_US, role: 'F1', atM: { xM: -2.6, yM: 0 } });
      someone(pen, 'F1', -2.6, 0, LINE_OF_US);
      drawWaiting(pen, { ...LINE_OF_THEM, role: 'X1', atM: { xM: 2.2, yM: 0 } });
      someone(pen, 'X1', 2.2, 0, LINE_OF_THEM);
    },
  },
  {
    name: 'Divider',
    says: 'across or along the ice',
    draw: pen =>
      pen.path('divider', sink => {
        sink.moveTo(-6, 0);
        sink.lineTo(6, 0);
      }),
  },
]);
