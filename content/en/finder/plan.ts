/** Where a walk began from a plan, and that may be what is wrong. */
export const planAsks = {
	planWrong: {
		light:
			'The plan has another start address or mode. Set the light by the plan, unless the light is right and the plan is wrong. With people in the room, ask the operator first: lights may jump.',
		desk: 'The plan has another start address or universe. Set the desk by the plan, unless the desk is right and the plan is wrong. With people in the room, ask the operator first: lights may jump.',
	},
	changePlan: 'The plan is wrong: change it',
} as const;
