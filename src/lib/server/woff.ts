// A WOFF 1.0 font unpacked to the plain font inside it (W3C Recommendation "WOFF File Format 1.0", sections 3 to 5).
// pdfkit can read WOFF by itself, but inflates each table anew for every PDF, in script: four fifths of a hand-out's time.
import { inflateSync } from 'node:zlib';

const HEADER = 44;
const ENTRY = 20;

export function unpackWoff(woff: Buffer): Buffer {
	if (woff.toString('latin1', 0, 4) !== 'wOFF') throw new Error('not a WOFF file');
	const count = woff.readUInt16BE(12);
	const tables = Array.from({ length: count }, (_, i) => {
		const at = HEADER + i * ENTRY;
		const [offset, packed, whole] = [woff.readUInt32BE(at + 4), woff.readUInt32BE(at + 8), woff.readUInt32BE(at + 12)];
		const data = woff.subarray(offset, offset + packed);
		// A table that wouldn't shrink is stored as it is.
		return { tag: woff.subarray(at, at + 4), sum: woff.readUInt32BE(at + 16), data: packed < whole ? inflateSync(data) : data };
	});
	const head = Buffer.alloc(12 + 16 * count);
	woff.copy(head, 0, 4, 8);
	head.writeUInt16BE(count, 4);
	// The three fields by which a reader may search the directory: the largest power of two that fits, its log, the rest.
	const log = Math.floor(Math.log2(count));
	head.writeUInt16BE(16 * 2 ** log, 6);
	head.writeUInt16BE(log, 8);
	head.writeUInt16BE(16 * (count - 2 ** log), 10);
	const parts: Buffer[] = [head];
	let offset = head.length;
	for (const [i, { tag, sum, data }] of tables.entries()) {
		const at = 12 + 16 * i;
		tag.copy(head, at);
		head.writeUInt32BE(sum, at + 4);
		head.writeUInt32BE(offset, at + 8);
		head.writeUInt32BE(data.length, at + 12);
		const padding = Buffer.alloc((4 - (data.length % 4)) % 4);
		parts.push(data, padding);
		offset += data.length + padding.length;
	}
	return Buffer.concat(parts);
}
