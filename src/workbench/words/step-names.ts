/** What steps that are more than one edit are called, as they follow "Undo: ". */
export const stepNames = {
  fromOtherTab: 'what another tab did',
  openBackup: 'open a backup file',
  readAgain: 'read a side again',
  setSize: 'set a sheet’s size',
  keepPart: 'keep a part of a sheet',
  leaveAsTaken: 'leave a sheet as it was taken',
  takeLightBack: 'take a light correction back',
} as const;
