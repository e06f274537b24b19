import { useMemo } from 'preact/hooks';
import { qrDrawing } from './qr.ts';

export interface QrCodeProps {
	/** What the code carries: a link. */
	readonly text: string;
	/** What it is, in words, for whoever cannot see it: 'QR code of the link to this paper'. */
	readonly label: string;
}

/** A QR code, dark on light in either theme, since that is what a camera looks for. Its size is its container's. */
export function QrCode({ text, label }: QrCodeProps) {
	const { size, path } = useMemo(() => qrDrawing(text), [text]);
	return (
		<svg class="qr-code" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={label} shape-rendering="crispEdges">
			<rect class="qr-light" width={size} height={size} />
			<path class="qr-dark" d={path} />
		</svg>
	);
}
