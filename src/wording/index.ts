/**
 * The rig in words: its reason trail, its text twin, its log. Pure functions from what the rig says of itself to sentences;
 * the words come from `content/en/reasons` and `content/en/rig`, the facts from the rig, and nothing is decided here but grammar.
 * A drill's words stand beside them: its task, its conditions, what was found instead, the next step.
 * The finder's words stand beside them: faults, repairs and complaints worded from a sheet, checks from a sheet and its rig.
 * An error's words are picked by its code and filled from its facts, and so is what an open fixture file could not carry.
 * So do the papers': what a question asks, its options, what is right, the working and why.
 */

export { describeChange } from './change.ts';
export { askedText, describeFixture, describeLight, describeRig, fixtureLight } from './describe.ts';
export { describeDisplay, describePanel, panelTitle } from './display.ts';
export { conditionText, drillTask, findingText, followTexts, harmText, ownTaskText } from './drills.ts';
export { errorText } from './error.ts';
export { eventText } from './event.ts';
export {
	faultCause,
	faultFacts,
	faultName,
	faultNameKey,
	faultTape,
	repairConfirm,
	repairText,
	repairTitle,
} from './fault.ts';
export { fill } from './fill.ts';
export { checkDoes, checkTitle, complaintText, outcomeText, type PlacedCheck, spotOf } from './finder.ts';
export { assumedText, leftOutText } from './gdtf.ts';
export { hintStepAfter, hintStepText, hintText } from './hint.ts';
export { itemTitle, keyName, settingTitle, settingValueText, startCodeWords } from './kinds.ts';
export { errorTextLater } from './laterError.ts';
export { mvrLeftText } from './mvr.ts';
export { cableName, cableText, fixtureName, modeCalled, modeName, partCalled, portText } from './names.ts';
export {
	answerText,
	keyText,
	kindName,
	misfitText,
	mistakeText,
	optionText,
	questionAsk,
	questionChart,
	whyText,
	workingText,
} from './papers.ts';
export { reasonStage, reasonText } from './reason.ts';
export { placeName, placeText } from './sheetNames.ts';
