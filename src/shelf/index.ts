/**
 * The shelf: the jobs on this device. List, open, copy, discard, restore, export, import. Changes a
 * job only through its log. The disk and the files come through ports handed in by main.
 */

export type {
  BackupKeeper,
  BackupRead,
  JobCard,
  JobFileRead,
  JobKeeper,
  Restored,
} from './ports';
export {
  createShelf,
  type RestoreReport,
  type Shelf,
  type ShelfParts,
  type ShelfState,
} from './shelf';
