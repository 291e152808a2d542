/* What to do instead, for everyday words that no act is there for. */
#ifndef EDITOR_ACTS_ADVICE_H
#define EDITOR_ACTS_ADVICE_H

/* A sentence, where one of the words typed is such a word; else NULL. */
const char *advice_for(const char *typed);

#endif
