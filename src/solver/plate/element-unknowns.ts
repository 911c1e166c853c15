/** Where the shapes (value, slope inside; value, slope outside) of w and u sit among the unknowns of an element. */

/** Of w, by the unknowns a node. */
export const W_AT = { 2: Int32Array.of(0, 1, 2, 3), 4: Int32Array.of(0, 1, 4, 5) } as const;
/** Of u, which only a node with four unknowns has. */
export const U_AT = Int32Array.of(2, 3, 6, 7);
