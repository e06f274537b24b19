/**
 * What the features share on screen: small Preact components that carry the house's look and manners (48-pixel targets, words for
 * every state, keyboard first). They work as islands and, with no script at all, as plain markup in an `.astro` page. Their looks
 * stand in `styles/`, in cascade layers: tokens raw, then by meaning, then base, parts, features, print.
 */
export { Button, type ButtonProps } from './Button.tsx';
export { CautionBox, type CautionBoxProps, CautionLine, type CautionsSaid, SaidAbove } from './CautionBox.tsx';
export { Dialog, type DialogProps } from './Dialog.tsx';
export { Field, type FieldProps } from './Field.tsx';
export { FileButton, type FileButtonProps } from './FileButton.tsx';
export { Live, type LiveProps } from './Live.tsx';
export { fetchedWith, type LaterWords, laterWith } from './later.tsx';
export { Notice, type NoticeProps } from './Notice.tsx';
export { proseParts } from './proseParts.tsx';
export { readNumber } from './readNumber.ts';
export { AnswerSign, answerDrawing, ComplaintSign } from './Sign.tsx';
export { Tape, type TapeProps } from './Tape.tsx';
export { Title, type TitleProps } from './Title.tsx';
export { Toggle, type ToggleProps } from './Toggle.tsx';
export { useAwake } from './useAwake.ts';
