// A text as the dark and light squares of a QR code (ISO/IEC 18004), plain data for Qr.svelte. Made on the server.
import { create } from 'qrcode';

export interface QrModules {
	/** One string of 0 and 1 a row. */
	readonly rows: readonly string[];
}

/** Level M: a creased or chalky sheet still reads. */
export function qrOf(text: string): QrModules {
	const { size, data } = create(text, { errorCorrectionLevel: 'M' }).modules;
	return { rows: Array.from({ length: size }, (_, y) => Array.from(data.slice(y * size, (y + 1) * size), (bit) => (bit ? '1' : '0')).join('')) };
}
