import { memo, type ReactNode, type RefObject, useId, useRef } from "react";
import { Button, Menu, MenuItem, MenuTrigger, Popover } from "react-aria-components";
import { savePicture } from "./save-picture.js";
import { type Room, useWidth } from "./use-width.js";
import "./picture.css";

/** What a picture draws into the room it has. */
export interface Drawing {
  /** [px] */
  readonly height: number;
  readonly marks: ReactNode;
}

/** Room for a drawing, and names for its own clip paths and the like. */
export interface PictureRoom extends Room {
  /** An id that no other picture has. */
  readonly id: (part: string) => string;
}

/** The figures of a picture as a table, for who cannot see it. */
export interface PictureTable {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export interface PictureProps {
  /** File name of a saved picture, without its ending; also the class `picture-<name>`. */
  readonly name: string;
  readonly title: string;
  /** Full sentences with the figures. */
  readonly description: string;
  /** One unit is one CSS pixel; called again when the width or the size of the print changes. */
  readonly draw: (room: PictureRoom) => Drawing;
  /** Where no table of the same figures stands beside the picture. */
  readonly table?: PictureTable | undefined;
  /** Stands under the picture, left of the button to save: a legend. */
  readonly foot?: ReactNode;
  /** Without the button where false: strips, thumbnails, gauges. */
  readonly saves?: boolean;
  /** Width before it is measured [px]. */
  readonly firstWidth?: number;
}

/**
 * The frame that every picture stands in: an svg as wide as the room there is, with a title and a description for who
 * cannot see it, and a button that saves it as SVG or PNG.
 *
 * @example
 * <Picture name="thrust" title="Thrust" description="…" draw={({ width }) => ({ height: 120, marks: <line x2={width} /> })} />
 */
export function Picture(props: PictureProps): ReactNode {
  const { name, title, description, draw, table, foot, saves = true, firstWidth = 640 } = props;
  const { box, print, room } = useWidth(firstWidth);
  const own = useId();
  const svg = useRef<SVGSVGElement>(null);
  const id = (part: string): string => `${own}${part}`;
  const { height, marks } = draw({ ...room, id });
  const { width } = room;
  return (
    <div className={`picture picture-${name}`}>
      <div className="picture-box" ref={box}>
        <span className="picture-print" ref={print} aria-hidden="true" />
        <svg
          ref={svg}
          className="picture-svg"
          width={width}
          height={height}
          viewBox={`0 0 ${width} ${height}`}
          role="img"
          aria-labelledby={id("title")}
          aria-describedby={id("description")}
        >
          <title id={id("title")}>{title}</title>
          <desc id={id("description")}>{description}</desc>
          {marks}
        </svg>
      </div>
      {table && <HiddenTable title={title} table={table} />}
      {(foot !== undefined || saves) && (
        <div className="picture-foot">
          {foot}
          {saves && <SaveMenu svg={svg} name={name} title={title} />}
        </div>
      )}
    </div>
  );
}

interface SaveMenuProps extends Pick<PictureProps, "name" | "title"> {
  readonly svg: RefObject<SVGSVGElement | null>;
}

/** Stays as it is while the figures of its picture change. */
const SaveMenu = memo(({ svg, name, title }: SaveMenuProps) => (
  <MenuTrigger>
    <Button className="picture-save" aria-label={`Save picture: ${title}`}>
      Save
    </Button>
    <Popover className="picture-menu" placement="bottom end">
      <Menu
        aria-label="Save picture as"
        onAction={(kind) => svg.current && savePicture(svg.current, name, kind === "png" ? "png" : "svg")}
      >
        <MenuItem id="svg" className="picture-kind">
          SVG, to print
        </MenuItem>
        <MenuItem id="png" className="picture-kind">
          PNG, to send
        </MenuItem>
      </Menu>
    </Popover>
  </MenuTrigger>
));

function HiddenTable({ title, table }: { title: string; table: PictureTable }): ReactNode {
  return (
    <div className="hidden">
      <table>
        <caption>{title}</caption>
        <thead>
          <tr>
            {table.head.map((cell) => (
              <th key={cell} scope="col">
                {cell}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map(([first, ...rest]) => (
            <tr key={first}>
              <th scope="row">{first}</th>
              {rest.map((cell, i) => (
                <td key={table.head[i + 1] ?? i}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
