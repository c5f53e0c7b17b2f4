interface AmountTableProps {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** Names and figures in columns. */
export const AmountTable = ({ head, rows }: AmountTableProps) => (
  <table class="picture-table">
    <thead>
      <tr>
        {head.map((text, at) => (
          <th key={at} scope="col">
            {text}
          </th>
        ))}
      </tr>
    </thead>
    <tbody>
      {rows.map(([first, ...rest], at) => (
        <tr key={at}>
          <th scope="row">{first}</th>
          {rest.map((text, column) => (
            <td key={column}>{text}</td>
          ))}
        </tr>
      ))}
    </tbody>
  </table>
);
