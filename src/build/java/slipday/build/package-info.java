/** What the build does to classes that are compiled; no part of the tool. */
package slipday.build;
