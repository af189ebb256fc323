import type { Drill } from '@icewright/book';
import type { Lengths } from '@icewright/engine';
import { drawDrillPicture, drillPictureSize, type Pen, recordingOf, svgFile } from '@icewright/picture';
import { ownFontRules } from './own-fonts.ts';
import { picturedOf } from './sheet-of.ts';

export interface DrillSvg {
  readonly text: string;
  readonly width: number;
  readonly height: number;
}

/** The drill as an SVG that stands alone, letters and all. `bare`: without title and words, where they stand beside it. */
export async function drillSvg(drill: Drill, lengths: Lengths, bare = false): Promise<DrillSvg> {
  const pictured = { ...picturedOf(drill, lengths), ...(bare ? { title: '', says: '' } : {}) };
  const { width, height } = sizeOf(pictured);
  const words = JSON.stringify([
    drill.title,
    drill.says,
    drill.keyPoints,
    Object.values(drill.spots).map(spot => spot.role),
  ]);
  const text = svgFile(
    pen => drawDrillPicture(pen, pictured),
    { viewBox: [0, 0, width, height], label: `The drill ${drill.title}`, idPrefix: 'drill' },
    undefined,
    await ownFontRules(words),
  );
  return { text, width, height };
}

const PNG_SCALE = 2;

/** The same in dots, two to each px of the SVG. */
export async function drillPng(drill: Drill, lengths: Lengths): Promise<Blob> {
  const { text, width, height } = await drillSvg(drill, lengths);
  const address = URL.createObjectURL(new Blob([text], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = width * PNG_SCALE;
    canvas.height = height * PNG_SCALE;
    canvas.getContext('2d')!.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) =>
      canvas.toBlob(
        blob => (blob === null ? reject(new Error('the picture is too large')) : resolve(blob)),
        'image/png',
      ),
    );
  } finally {
    URL.revokeObjectURL(address);
  }
}

function sizeOf(pictured: ReturnType<typeof picturedOf>) {
  let size = { width: 0, height: 0 };
  recordingOf((pen: Pen) => {
    size = drillPictureSize(pen, pictured);
  });
  return size;
}
