/**
 * Draws the extension's icon: the head of a bolt with a stripe of paint across it and what it sits on, so that anyone
 * can see that it has not moved. A PNG of `size` pixels a side, with nothing but arithmetic and deflate.
 */
import {crc32, deflateSync} from 'node:zlib';

const PLATE = [51, 65, 85];
const WASHER = [148, 163, 184];
const HEAD = [226, 232, 240];
const PAINT = [234, 88, 12];

export function icon(size) {
  const rows = Buffer.alloc(size * (size * 4 + 1));
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) {
      rows.set(pixel(x / size, y / size, 1 / size), y * (size * 4 + 1) + 1 + x * 4);
    }
  }
  return png(size, deflateSync(rows, {level: 9}));
}

/** Nine samples a pixel, so that edges are smooth. */
function pixel(x, y, step) {
  const sum = [0, 0, 0, 0];
  for (let i = 0; i < 9; i++) {
    const [u, v] = [x + ((i % 3) + 0.5) * (step / 3), y + (Math.floor(i / 3) + 0.5) * (step / 3)];
    const [r, g, b, a] = colour(u - 0.5, v - 0.5);
    sum[0] += r * a;
    sum[1] += g * a;
    sum[2] += b * a;
    sum[3] += a;
  }
  const [r, g, b, a] = sum;
  return a === 0 ? [0, 0, 0, 0] : [r / a, g / a, b / a, (a / 9) * 255].map(Math.round);
}

function colour(x, y) {
  const plate = Math.max(Math.abs(x), Math.abs(y)) < 0.4 || Math.hypot(over(x), over(y)) < 0.08;
  const [along, across] = [(x - y) / Math.SQRT2, (x + y) / Math.SQRT2];
  if (Math.abs(across) < 0.055 && Math.abs(along) < 0.46 && along > -0.1 && plate) return [...PAINT, 1];
  if (isHexagon(x, y, 0.25)) return [...HEAD, 1];
  if (Math.hypot(x, y) < 0.33) return [...WASHER, 1];
  return plate ? [...PLATE, 1] : [0, 0, 0, 0];
}

/** How far outside of the square with round corners. */
function over(at) {
  return Math.max(0, Math.abs(at) - 0.4);
}

function isHexagon(x, y, reach) {
  return [0, 60, 120].every((degrees) => {
    const angle = ((degrees + 15) * Math.PI) / 180;
    return Math.abs(x * Math.cos(angle) + y * Math.sin(angle)) < reach;
  });
}

function png(size, pixels) {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(size, 0);
  head.writeUInt32BE(size, 4);
  head.set([8, 6, 0, 0, 0], 8);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    signature,
    chunk('IHDR', head),
    chunk('IDAT', pixels),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(type, data) {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const all = Buffer.alloc(body.length + 8);
  all.writeUInt32BE(data.length, 0);
  body.copy(all, 4);
  all.writeUInt32BE(crc32(body), body.length + 4);
  return all;
}
