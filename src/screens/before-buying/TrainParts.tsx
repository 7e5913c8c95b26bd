import styles from './train.module.css';
import type { TrainPlace } from './trainPlaces';

interface Props {
  /** Places where something acts: drawn live. */
  readonly acting: ReadonlySet<TrainPlace>;
  /** The id of the metal's hatch. */
  readonly metal: string;
}

/** The valve train from the side, block and head cut: cam, lifter, pushrod, rocker, valve. */
export function TrainParts({ acting, metal }: Props) {
  const at = (place: TrainPlace, otherwise: string | undefined) =>
    acting.has(place) ? `${otherwise} ${styles.acting}` : otherwise;
  const cut = { className: styles.cut, fill: `url(#${metal})` };
  return (
    <g>
      <path d="M160 290H226V392H160ZM312 290H330V392H312Z" {...cut} />
      <path d="M86 344H100V388H86ZM156 344H160V388H156Z" {...cut} />
      <path d="M160 290H226M312 290H330" className={at('deck milled', styles.face)} />
      <path
        d="M160 282H226V290H160ZM312 282H330V290H312Z"
        className={at('gasket', styles.gasket)}
      />
      <path d="M160 190H330V282H308L298 264H258L248 282H160Z" {...cut} />
      <path d="M160 282H248M308 282H330" className={at('head milled', styles.face)} />
      <path
        d="M142.1 463.1L104.7 479A12 12 0 0 1 88.1 466.8L92.2 426.4A36 36 0 1 1 142.1 463.1Z"
        className={styles.part}
      />
      <circle cx={128} cy={430} r={36} className={at('base circle', styles.turned)} />
      <circle cx={128} cy={430} r={4} className={styles.part} />
      <path d="M104 322H152V394H104Z" className={styles.part} />
      <path
        d="M111 330H119A9 9 0 0 0 137 330H145V364H111Z"
        className={at('plunger', styles.part)}
      />
      <path d="M119 330A9 9 0 0 0 137 330" className={at('lifter cup', styles.turned)} />
      <path d="M122 336V118A6 6 0 0 1 134 118V336A6 6 0 0 1 122 336Z" className={styles.pushrod} />
      <path d="M186 190L194 104H206L214 190Z" className={styles.part} />
      <path d="M182 184H218V190H182Z" className={at('pivot shim', styles.gasket)} />
      <path d="M274 112H282V252L298 264H258L274 252Z" className={styles.part} />
      <path d="M264 186L292 176L264 166L292 156L264 146L292 136" className={styles.spring} />
      <path d="M260 134H296V128H260Z" className={styles.part} />
      <path d="M274 112H282" className={at('valve tip', styles.face)} />
      <path d="M114 102Q200 60 292 102L286 114Q200 88 120 116Z" className={styles.part} />
      <path d="M119 113A9 9 0 0 1 137 110" className={at('rocker cup', styles.turned)} />
      <circle cx={200} cy={92} r={8} className={at('pivot shim', styles.part)} />
      <path d="M193 58H207V68H193Z" className={styles.part} />
    </g>
  );
}
