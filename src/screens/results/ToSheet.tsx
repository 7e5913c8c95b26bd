import { picturesWords as words } from '../pictures/picturesWords';
import { useServices } from '../services';
import { Action } from '../shell/Action';

/** The way to the sheet that is handed over. */
export function ToSheet({ jobId }: { readonly jobId: string }) {
  const { go } = useServices();
  return <Action onPress={() => go({ screen: 'sheet', jobId })}>{words.toSheet}</Action>;
}
