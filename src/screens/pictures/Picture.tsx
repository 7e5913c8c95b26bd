import { type ReactNode, useId } from 'react';
import { Fold } from '../shell/Fold';
import styles from './pictures.module.css';
import { picturesWords as words } from './picturesWords';

interface TableProps {
  readonly columns: readonly string[];
  /** The first of each is the row's name. */
  readonly rows: readonly (readonly string[])[];
}

interface Props {
  readonly title: string;
  readonly keyed: string;
  readonly children: ReactNode;
  /** The same figures; left out where a table beside the picture has them all. */
  readonly table?: TableProps;
}

/** A picture with its name, what its marks mean, and its table. */
export function Picture({ title, keyed, children, table }: Props) {
  const id = useId();
  return (
    <figure className={styles.picture} aria-labelledby={id}>
      <figcaption id={id}>{title}</figcaption>
      {children}
      <p className={styles.key}>{keyed}</p>
      {table && (
        <Fold title={words.asTable}>
          <Table title={title} table={table} />
        </Fold>
      )}
    </figure>
  );
}

function Table({ title, table }: { readonly title: string; readonly table: TableProps }) {
  return (
    <table className={styles.table}>
      <caption>{title}</caption>
      <thead>
        <tr>
          {table.columns.map((column) => (
            <th key={column} scope="col">
              {column}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {table.rows.map(([name, ...cells]) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            {cells.map((cell, at) => (
              <td key={table.columns[at + 1]}>{cell}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
