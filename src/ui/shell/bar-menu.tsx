/** The menu of the top bar: what does not stand in the bar. */
import type { ComponentProps, JSX } from 'preact';
import { FoldOut, foldOutButton } from '../panels/fold-out.tsx';

const NAME = 'bar-menu';
export const MENU_BUTTON = foldOutButton(NAME);

export const BarMenu = (props: Omit<ComponentProps<typeof FoldOut>, 'name'>): JSX.Element => (
  <FoldOut name={NAME} {...props} />
);
