export interface RadioRowProps<Value extends string> {
  readonly legend: string;
  readonly name: string;
  readonly value: Value;
  readonly options: readonly { readonly value: Value; readonly label: string }[];
  readonly onChange: (value: Value) => void;
}

/** One choice out of a few, all in sight. */
export function RadioRow<Value extends string>({ legend, name, value, options, onChange }: RadioRowProps<Value>) {
  return (
    <fieldset className="radio-row">
      <legend>{legend}</legend>
      {options.map((option) => (
        <label key={option.value} className="chip">
          <input
            type="radio"
            name={name}
            checked={option.value === value}
            onChange={() => {
              onChange(option.value);
            }}
          />
          {option.label}
        </label>
      ))}
    </fieldset>
  );
}
