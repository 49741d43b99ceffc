/** What a paper that is dragged out of the drawer is carried as; its data is the paper's key. */
export const paperType = 'application/x-quirewise-paper';
