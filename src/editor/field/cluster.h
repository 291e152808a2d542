/* Which characters of a text belong together: a cluster is what people take for one letter, so that
 * a cursor steps over all of it and no line is cut within it. It is a character with the marks and
 * the characters without width that follow it, as the C library knows them in the session's locale,
 * with the colour of a skin, and with what a joiner binds to it. A flag is two clusters, and so may
 * be consonants that are written in one. */
#ifndef EDITOR_FIELD_CLUSTER_H
#define EDITOR_FIELD_CLUSTER_H

#include <stdbool.h>
#include <stdint.h>

/* Whether a character goes with the one before it. */
bool cluster_binds(uint32_t before, uint32_t code);
/* Whether a character is only there to change the looks of others or to join them: what is left of
 * a cluster without its other end would not show it. */
bool cluster_is_bond(uint32_t code);

#endif
