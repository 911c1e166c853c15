/** Which page the address leads to. */
import { computed } from '@preact/signals';
import { fragment } from '../app/route.ts';
import { pageAt } from './pages.ts';

export const currentPage = computed(() => pageAt(fragment.value));
