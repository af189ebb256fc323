import { existsSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { cameraTrackerOf, type TrackedFrame, type TrackedStretch } from '@icewright/engine';
import { type Decoder, decoderHere, filmFrames } from './film-truth/film-frames.ts';
import { type Accuracy, type CarryReport, measureCarry } from './film-truth/measure-carry.ts';
import { offerMeterOf, offerSamples } from './film-truth/measure-offers.ts';
import { type PeopleAccuracy, peopleMeterOf } from './film-truth/measure-people.ts';
import { type TrackAccuracy, trackMeterOf } from './film-truth/measure-tracks.ts';
import { offerWords } from './film-truth/offer-words.ts';
import { type FilmTruth, readTruth } from './film-truth/truth-file.ts';

const HELP = `film-truth: how true pins, pins carried through a pan, and followed skaters are on a film whose every position is known.

  npm run film-truth -- FILM TRUTH [--decoder chromium|ffmpeg] [--step NUMBER] [--until SECONDS] [--seed NUMBER]
                        [--hands SECONDS,… | none] [--who NAME,…] [--json]
  npm run film-truth -- FILM TRUTH --offers [--every COUNT] [--decoder …] [--until SECONDS] [--json]
  npm run film-truth -- FILM TRUTH --people [--decoder …] [--until SECONDS] [--seed NUMBER] [--json]

FILM   a film this machine's Chromium (or ffmpeg) decodes
TRUTH  what is known of it, in the format of fixtures/film-truth/README.md

Follows the camera from the first picture to the last, pins about one picture a second and carries the pins to those
1, 5 and 10 s before and after. Prints metres over the ice in view, and how many of the 95 % ellipses hold the truth.
--step 2 follows every second picture only: quicker, and enough for a film of 50 or 60 a second.
--until 11 follows the first eleven seconds only.
Where the truth tells where skaters are, they are followed too, each set by hand (a pixel off) every 2, 1 and 4 seconds:
--hands sets other seconds, or none; --who follows only these, by their ids in the truth.
--people measures, instead of all that, people found by what is not ice, in about one picture a second: how many of those found are somebody, how many in
clear view are found, and how far off their feet are.
--offers measures, instead of all that, pins offered by the machine for about every 20th picture alone (--every sets another count): how often
the calibration they give is within half a metre of the truth, how often none are offered, and how often they are wrong.
--json prints the same as JSON. Ends with 0, or 2 when something cannot be read or decoded.`;

const { values, positionals } = parseArgs({
  options: {
    help: { type: 'boolean' },
    json: { type: 'boolean' },
    people: { type: 'boolean' },
    offers: { type: 'boolean' },
    every: { type: 'string', default: '20' },
    decoder: { type: 'string' },
    step: { type: 'string', default: '1' },
    until: { type: 'string', default: 'Infinity' },
    seed: { type: 'string', default: '1' },
    hands: { type: 'string', default: '2,1,4' },
    who: { type: 'string', default: '' },
  },
  allowPositionals: true,
});

process.exitCode = values.help ? say(HELP) : await measure(positionals);

async function measure([film, truthPath]: readonly string[]): Promise<number> {
  if (film === undefined || truthPath === undefined)
    return refuse('Name a film and its truth; --help says more.');
  if (!existsSync(film)) return refuse(`${film} is not there.`);
  const truth = readTruth(truthPath);
  if (typeof truth === 'string') return refuse(truth);
  const decoder = decoderHere(values.decoder);
  if (decoder === undefined) {
    return refuse(
      'Nothing here decodes a film: neither a Chromium (name one with ICEWRIGHT_BROWSER=/path/to/chromium) nor an ffmpeg was found.',
    );
  }
  const step = Number(values.step);
  if (!(Number.isInteger(step) && step > 0)) return refuse('--step takes a whole number from 1 on.');
  const handsS = values.hands === 'none' ? [] : values.hands.split(',').map(Number);
  if (handsS.some(seconds => !(seconds > 0))) return refuse('--hands takes seconds, as in 2,1,4, or none.');
  const untilS = Number(values.until);
  if (!(untilS > 0)) return refuse('--until takes seconds, more than 0.');
  if (values.people) return measureFoundPeople(film, truth, untilS, decoder);
  if (values.offers) return measureOfferedPins(film, truth, untilS, decoder);
  const followed = truth.frames.filter(({ i, ptsS }) => i % step === 0 && ptsS <= untilS);
  const lastIndex = Number.isFinite(untilS) ? (followed.at(-1)?.i ?? 0) : Number.POSITIVE_INFINITY;
  const startMs = performance.now();
  const frames: TrackedFrame[] = [];
  const leftOut = truth.overlays.map(({ rect: [leftPx, topPx, rightPx, bottomPx] }) => ({
    leftPx,
    topPx,
    rightPx,
    bottomPx,
  }));
  const tracker = cameraTrackerOf({ seed: Number(values.seed), leftOut });
  let trackMs = 0;
  let frameCount = 0;
  try {
    frameCount = await filmFrames(
      decoder,
      film,
      truth.picture,
      { step, lastIndex },
      (frameIndex, grey, widthPx, heightPx) => {
        if (widthPx !== truth.picture.width || heightPx !== truth.picture.height) {
          throw new Error(`its pictures are ${widthPx} × ${heightPx} px, not as in the truth`);
        }
        const beginMs = performance.now();
        frames.push(tracker.next(frameIndex, { widthPx, heightPx, grey }));
        trackMs += performance.now() - beginMs;
        if (!values.json && frameIndex % 100 === 99) process.stderr.write(`picture ${frameIndex + 1} …\r`);
      },
    );
  } catch (error) {
    return refuse(error instanceof Error ? error.message : String(error));
  }
  const picture = { widthPx: truth.picture.width, heightPx: truth.picture.height };
  const known = { ...truth, frames: followed, frameCount: Math.min(truth.frameCount, lastIndex + 1) };
  const report = measureCarry({ frames, picture }, known, Number(values.seed));
  const reached = { ...truth, frames: truth.frames.filter(({ i }) => i <= lastIndex) };
  const tracks = await followSkaters(film, reached, lastIndex, { frames, picture }, handsS, decoder);
  const took = {
    decoder,
    perPictureMs: trackMs / Math.max(1, frames.length),
    wholeS: (performance.now() - startMs) / 1000,
  };
  return say(
    values.json
      ? JSON.stringify({ film, frameCount, ...took, ...report, tracks }, null, 2)
      : [...wordsOf(film, known, frameCount, report, took), ...trackWords(tracks)].join('\n'),
  );
}

async function measureOfferedPins(
  film: string,
  truth: FilmTruth,
  untilS: number,
  decoder: Decoder,
): Promise<number> {
  const every = Number(values.every);
  if (!(Number.isInteger(every) && every > 0)) return refuse('--every takes a whole number from 1 on.');
  const samples = offerSamples(truth, every).filter(({ ptsS }) => ptsS <= untilS);
  const meter = offerMeterOf(truth, samples);
  const only = samples.map(({ i }) => i);
  const asked = { step: 1, lastIndex: only.at(-1) ?? 0, only, inColour: true };
  try {
    await filmFrames(decoder, film, truth.picture, asked, (frameIndex, rgba, widthPx, heightPx) => {
      if (widthPx !== truth.picture.width || heightPx !== truth.picture.height) {
        throw new Error(`its pictures are ${widthPx} × ${heightPx} px, not as in the truth`);
      }
      meter.next(frameIndex, rgba, widthPx, heightPx);
    });
  } catch (error) {
    return refuse(error instanceof Error ? error.message : String(error));
  }
  const report = meter.report();
  return say(values.json ? JSON.stringify({ film, ...report }, null, 2) : offerWords(report).join('\n'));
}

async function measureFoundPeople(
  film: string,
  truth: FilmTruth,
  untilS: number,
  decoder: Decoder,
): Promise<number> {
  const meter = peopleMeterOf(truth, Number(values.seed), untilS);
  if (meter.wanted.size === 0) return refuse('The truth does not tell where skaters are.');
  const lastIndex = Math.max(...meter.wanted);
  const asked = { step: 1, lastIndex, inColour: true, only: [...meter.wanted] };
  try {
    await filmFrames(decoder, film, truth.picture, asked, (frameIndex, rgba, widthPx, heightPx) => {
      meter.next(frameIndex, { widthPx, heightPx, rgba });
    });
  } catch (error) {
    return refuse(error instanceof Error ? error.message : String(error));
  }
  const report = meter.report();
  return say(values.json ? JSON.stringify({ film, ...report }, null, 2) : peopleWords(report));
}

function peopleWords(one: PeopleAccuracy): string {
  const share = (value: number) => `${(100 * value).toFixed(1)} %`;
  return [
    `People found in ${one.pictureCount} pictures, each tied by 12 pins a pixel off: ${one.foundCount}`,
    `  of them somebody      ${share(one.precision)}`,
    `  found in clear view   ${share(one.recall)}`,
    `  feet off by           median ${one.footMedianM.toFixed(2)} m, p95 ${one.footP95M.toFixed(2)} m; ellipses that hold ${share(one.heldShare)}`,
    `  grouped by dress      ${share(one.groupedShare)} with most of their group, ${share(one.letteredShare)} have one`,
  ].join('\n');
}

/** A second look through the film: where somebody is looked for hangs on how every frame is tied. */
async function followSkaters(
  film: string,
  truth: FilmTruth,
  lastIndex: number,
  stretch: TrackedStretch,
  handsS: readonly number[],
  decoder: Decoder,
): Promise<readonly TrackAccuracy[]> {
  if (handsS.length === 0 || !truth.frames.some(({ skaters }) => skaters !== undefined)) return [];
  const who = values.who.split(',').filter(name => name !== '');
  const meter = trackMeterOf(stretch, truth, handsS, Number(values.seed), who);
  await filmFrames(
    decoder,
    film,
    truth.picture,
    { step: 1, lastIndex },
    (frameIndex, grey, widthPx, heightPx) => {
      meter.next(frameIndex, { widthPx, heightPx, grey });
      if (!values.json && frameIndex % 100 === 99) process.stderr.write(`followed to ${frameIndex + 1} …\r`);
    },
  );
  return meter.report();
}

function trackWords(tracks: readonly TrackAccuracy[]): string[] {
  if (tracks.length === 0) return [];
  const share = (value: number) => `${(100 * value).toFixed(1)} %`;
  return [
    '',
    'Skaters followed between hands a pixel off, the camera tied by 12 pins every 5 s (bar: place 0.35 m, speed 0.40 m/s rms)',
    '              place rms  median     p95   ± holds   speed rms   ± holds      told   frames   skaters, hands',
    ...tracks.map(
      one =>
        `every ${one.everyS} s`.padEnd(13) +
        `${one.placeRmseM.toFixed(2)} m`.padStart(10) +
        `${one.placeMedianM.toFixed(2)} m`.padStart(8) +
        `${one.placeP95M.toFixed(2)} m`.padStart(8) +
        share(one.placeHeldShare).padStart(10) +
        `${one.speedRmseMps.toFixed(2)} m/s`.padStart(12) +
        share(one.speedHeldShare).padStart(10) +
        share(one.toldShare).padStart(10) +
        String(one.count).padStart(9) +
        `${one.skaterCount}, ${one.handCount}`.padStart(17),
    ),
  ];
}

function wordsOf(
  film: string,
  truth: FilmTruth,
  frameCount: number,
  report: CarryReport,
  took: { decoder: string; perPictureMs: number; wholeS: number },
): string[] {
  const { lens } = report;
  const term = `${(100 * lens.value).toFixed(2)} ± ${(196 * lens.sd).toFixed(2)} %`;
  const lensWords = lens.told
    ? `lens ${term}, ${lens.used === 0 ? 'so none is reckoned with' : 'reckoned with'}; true ${(100 * truth.lens.k1).toFixed(2)} %`
    : `the camera does not turn enough to tell a lens; true ${(100 * truth.lens.k1).toFixed(2)} %`;
  const counted =
    frameCount === truth.frameCount
      ? ''
      : ` CAUTION: the truth knows ${truth.frameCount} pictures, so frames may be mixed up.`;
  return [
    `${film}: ${frameCount} pictures by ${took.decoder}, ${report.keyCount} key pictures, ${took.perPictureMs.toFixed(0)} ms a picture to follow, ${took.wholeS.toFixed(0)} s in all.${counted}`,
    lensWords,
    ...report.losses.map(({ frameIndex, because }) => `lost at picture ${frameIndex}: ${because}`),
    '',
    '                                 median     p95   worst   ellipses that hold   half axis   points',
    lineOf('12 pins, 1 px: that picture', report.pinned),
    ...report.drift.map(({ afterS, accuracy }) => lineOf(`exact pins, carried ${afterS} s`, accuracy)),
    ...report.clicked.map(({ afterS, accuracy }) => lineOf(`12 pins, 1 px, carried ${afterS} s`, accuracy)),
    lineOf('pinned at both ends of 10 s', report.between),
  ];
}

function lineOf(name: string, { count, medianM, p95M, worstM, heldShare, reachM, lost }: Accuracy): string {
  const losses = Object.entries(lost).map(([reason, times]) => `${times} × ${reason}`);
  const none = losses.length > 0 ? `   none: ${losses.join(', ')}` : '';
  if (count === 0) return `${name.padEnd(30)} nothing to compare${none}`;
  const metres = (value: number) => `${value.toFixed(2)} m`.padStart(8);
  return `${name.padEnd(30)} ${metres(medianM)}${metres(p95M)}${metres(worstM)}   ${`${(100 * heldShare).toFixed(1)} %`.padStart(18)}   ${`± ${reachM.toFixed(2)} m`.padStart(9)}   ${String(count).padStart(6)}${none}`;
}

function refuse(why: string): number {
  console.error(why);
  return 2;
}

function say(text: string): number {
  console.log(text);
  return 0;
}
