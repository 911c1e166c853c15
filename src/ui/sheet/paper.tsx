/** The sheet as it prints, on a piece of paper of its own: no style of the bench reaches it, and none of its leaves it. */
import { type JSX, render } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { SheetNode } from '../../sheet/node.ts';
import { SHEET_STYLE } from '../../sheet/style.ts';
import { drawNode } from './draw-node.ts';

export function Paper({ sheet }: { sheet: SheetNode }): JSX.Element {
  const host = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    if (!host.current) return;
    const root = host.current.shadowRoot ?? host.current.attachShadow({ mode: 'open' });
    render([<style key="style">{SHEET_STYLE}</style>, drawNode(sheet)], root);
  }, [sheet]);
  return <div class="paper" ref={host} />;
}
