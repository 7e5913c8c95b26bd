import { useStore } from 'zustand';
import { useServices } from '../services';
import { benchWords } from './benchWords';
import styles from './question.module.css';

/** Whether the ear waits for the builder to agree that speech may leave the device. */
export function useEarNotice(): boolean {
  return useStore(useServices().ear, ({ state, why }) => state === 'shut' && why === 'notice');
}

/** In the hand the box may stand below what is seen; answered, the bench goes back to where it was. */
function bringIntoView(box: HTMLElement): () => void {
  const page = box.ownerDocument.defaultView;
  const before = page?.scrollY ?? 0;
  box.scrollIntoView({ block: 'nearest' });
  return () => page?.scrollTo({ top: before });
}

/** Said before any sound leaves the device, and not heard until it is agreed to. */
export function EarNoticeBox() {
  const { agreeToLeave, shutEar } = useServices();
  return (
    <section className={`${styles.question} ${styles.notice}`} role="alert" ref={bringIntoView}>
      <p className={styles.questionText}>{benchWords.ear.noticeTitle}</p>
      <p className={styles.questionHint}>{benchWords.ear.notice}</p>
      <div className={styles.answers}>
        <button type="button" onClick={agreeToLeave}>
          {benchWords.ear.agree}
        </button>
        <button type="button" onClick={shutEar}>
          {benchWords.ear.refuse}
        </button>
      </div>
    </section>
  );
}
