/** What a paper is called that was taken out of the drawer and is still on a leaf. */
export const gone = 'a paper that is no longer in the drawer';
