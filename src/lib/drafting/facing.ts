// Shaped facings: a strip of the skirt's own shape that turns in its waist or its hem.
import { hemFacing, waistFacing, type Follows, type PanelSize } from './panel.ts';
import { farther } from './shape.ts';
import type { FlaredSkirt } from './skirt.ts';

/**
 * Sewn on along the skirt's own edge, with the same allowance; the other edge is neatened where it is cut. As deep
 * everywhere, measured along the length, as the length itself is.
 */
export function facingSizes(size: PanelSize, { band, hemFinish, hemFacing: deep }: FlaredSkirt): readonly { readonly follows: Follows; readonly size: PanelSize }[] {
	const free = 'free edge';
	const { shape } = size;
	const sizes: { readonly follows: Follows; readonly size: PanelSize }[] = [];
	if (band.kind === 'faced') sizes.push({
		follows: waistFacing,
		size: {
			...size, hemRadius: size.waistRadius + band.facing, hemAllowance: 0, outer: free, zipEnd: undefined, foldedBack: false,
			...(shape && { shape: { ...shape, outer: farther(shape.inner, band.facing) } })
		}
	});
	if (hemFinish === 'faced') sizes.push({
		follows: hemFacing,
		size: {
			...size, waistRadius: size.hemRadius - deep, waistAllowance: 0, inner: free, zipEnd: undefined, foldedBack: false,
			...(shape && { shape: { ...shape, inner: farther(shape.outer, -deep) } })
		}
	});
	return sizes;
}
