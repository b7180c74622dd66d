// Shaped facings: a strip of the skirt's own shape that turns in its waist or its hem.
import { hemFacing, panelPieces, waistFacing, type PanelPlace, type PanelSize } from './panel.ts';
import type { Piece } from './piece.ts';
import { ringPiece } from './ring.ts';
import { isRing, type FlaredSkirt } from './skirt.ts';

/** Sewn on along the skirt's own edge, with the same allowance; the other edge is neatened where it is cut. */
export function facingPieces(places: readonly PanelPlace[], size: PanelSize, skirt: FlaredSkirt): readonly Piece[] {
	const free = 'free edge';
	const pieces: Piece[] = [];
	if (skirt.band.kind === 'faced') {
		const waist = { ...size, hemRadius: size.waistRadius + skirt.band.facing, hemAllowance: 0, outer: free, zipEnd: undefined };
		pieces.push(...(isRing(skirt) ? [ringPiece(waist, 'waist facing', 'shell')] : panelPieces(places, waist, waistFacing)));
	}
	if (skirt.hemFinish === 'faced') {
		const hem = { ...size, waistRadius: size.hemRadius - skirt.hemFacing, waistAllowance: 0, inner: free, zipEnd: undefined };
		pieces.push(...(isRing(skirt) ? [ringPiece(hem, 'hem facing', 'shell')] : panelPieces(places, hem, hemFacing)));
	}
	return pieces;
}
