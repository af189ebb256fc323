import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import type { Asked, OnFrame } from './on-frame.ts';

/**
 * The pictures asked for, in the order of showing, by a Chromium without a window: the decoder and the film reader
 * that the workbench itself has. Pictures come back to this process over loopback, one at a time.
 */
export const chromiumFrames = async (
  executablePath: string,
  film: string,
  { step, lastIndex, inColour = false, only }: Asked,
  onFrame: OnFrame,
): Promise<number> => {
  const server = createServer(async (request, response) => {
    const asked = new URL(request.url ?? '/', 'http://localhost');
    if (request.method === 'POST') {
      const parts: Buffer[] = [];
      for await (const part of request) parts.push(part as Buffer);
      const [index, width, height] = ['index', 'width', 'height'].map(name =>
        Number(asked.searchParams.get(name)),
      );
      onFrame(index!, new Uint8Array(Buffer.concat(parts)), width!, height!);
      response.end();
    } else if (asked.pathname === '/reader.mjs') {
      response.setHeader('Content-Type', 'text/javascript');
      response.end(readFileSync(READER));
    } else {
      response.setHeader('Content-Type', 'text/html');
      response.end('<!doctype html><input type="file">');
    }
  });
  await new Promise<void>(resolve => server.listen(0, '127.0.0.1', resolve));
  const browser = await chromium.launch({
    executablePath,
    args: ['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking'],
  });
  try {
    const page = await browser.newPage();
    await page.goto(`http://localhost:${(server.address() as AddressInfo).port}/`);
    await page.setInputFiles('input', film);
    const answer = await page.evaluate(
      `(${DECODE})(${step}, ${lastIndex}, ${inColour}, ${JSON.stringify(only ?? null)})`,
    );
    if (typeof answer !== 'number') throw new Error(`Chromium could not read ${film}: ${String(answer)}`);
    return answer;
  } finally {
    await browser.close();
    server.close();
  }
};

const READER = fileURLToPath(
  new URL('../../node_modules/mediabunny/dist/bundles/mediabunny.min.mjs', import.meta.url),
);

/** Runs in the page. A pixel is one number: its grey, or its four bytes. The first plane of a decoded picture is its grey; other kinds go through RGBA. */
const DECODE = `async (step, lastIndex, inColour, only) => {
  const { ALL_FORMATS, BlobSource, Input, VideoSampleSink } = await import('/reader.mjs');
  const input = new Input({ formats: ALL_FORMATS, source: new BlobSource(document.querySelector('input').files[0]) });
  const track = await input.getPrimaryVideoTrack();
  if (!track) return 'no picture track';
  if (!(await track.canDecode())) return 'it does not decode ' + (await track.getCodec());
  const turn = await track.getRotation();
  const greyOf = async frame => {
    const { width, height } = frame.visibleRect;
    const grey = new Uint8Array(width * height);
    const isPlanar = frame.format === 'I420' || frame.format === 'NV12' || frame.format === 'I422' || frame.format === 'I444';
    const asked = isPlanar ? {} : { format: 'RGBA' };
    const bytes = new Uint8Array(frame.allocationSize(asked));
    const [{ offset, stride }] = await frame.copyTo(bytes, asked);
    for (let y = 0; y < height; y++) {
      for (let x = 0; x < width; x++) {
        const at = offset + y * stride + (isPlanar ? x : 4 * x);
        grey[y * width + x] = isPlanar ? bytes[at] : 0.299 * bytes[at] + 0.587 * bytes[at + 1] + 0.114 * bytes[at + 2];
      }
    }
    return { grey, width, height };
  };
  const colourOf = async frame => {
    const { width, height } = frame.visibleRect;
    const bytes = new Uint8Array(frame.allocationSize({ format: 'RGBA' }));
    const [{ offset, stride }] = await frame.copyTo(bytes, { format: 'RGBA' });
    const grey = new Uint32Array(width * height);
    for (let y = 0; y < height; y++) grey.set(new Uint32Array(bytes.slice(offset + y * stride, offset + y * stride + 4 * width).buffer), y * width);
    return { grey, width, height };
  };
  const turned = ({ grey, width, height }) => {
    if (turn === 0) return { grey, width, height };
    const sideways = turn !== 180;
    const [across, down] = sideways ? [height, width] : [width, height];
    const out = new grey.constructor(grey.length);
    for (let y = 0; y < down; y++) {
      for (let x = 0; x < across; x++) {
        const from = turn === 90 ? (height - 1 - x) * width + y
          : turn === 180 ? (height - 1 - y) * width + width - 1 - x
          : x * width + width - 1 - y;
        out[y * across + x] = grey[from];
      }
    }
    return { grey: out, width: across, height: down };
  };
  let count = 0;
  for await (const sample of new VideoSampleSink(track).samples()) {
    if (sample.timestamp + sample.duration <= 0 && sample.timestamp < 0) { sample.close(); continue; }
    if (count > lastIndex) { sample.close(); break; }
    const index = count++;
    if (index % step !== 0 || (only && !only.includes(index))) { sample.close(); continue; }
    const frame = sample.toVideoFrame();
    const { grey, width, height } = turned(await (inColour ? colourOf : greyOf)(frame));
    frame.close();
    sample.close();
    await fetch('/?index=' + index + '&width=' + width + '&height=' + height, { method: 'POST', body: new Blob([grey]) });
  }
  return count;
}`;
