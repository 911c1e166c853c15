/** The head of a page: its name, and what can be done with the page as a whole. The keyboard goes on here when it opens. */
import type { ComponentChildren, JSX } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { hasMoved } from '../app/route.ts';

interface HeadProps {
  readonly title: string;
  /** The name shows only while it has the focus: the page tells by itself what it is. */
  readonly quiet?: boolean;
  readonly children?: ComponentChildren;
}

export function PageHead({ title, quiet, children }: HeadProps): JSX.Element {
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => {
    if (hasMoved.peek()) heading.current?.focus({ preventScroll: true });
  }, []);
  return (
    <header class={quiet ? 'page-head quiet' : 'page-head'}>
      <h1 ref={heading} tabIndex={-1}>
        {title}
      </h1>
      {children}
    </header>
  );
}
