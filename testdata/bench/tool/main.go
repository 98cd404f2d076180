// Command tool does what the benchmark scripts need beside the programs they compare.
package main

import (
	"fmt"
	"os"
)

var commands = map[string]func([]string) error{
	"make":    makeFiles, // KIND TAGS N DIR: facts, one file for each line
	"stream":  stream,    // KIND N: facts on the standard output, one line each, without end or after N lines
	"sheets":  sheets,    // N DIR: sheets, one file for each line
	"post":    post,      // URL CONNECTIONS DIR: put every file of DIR to a server; findings on the standard output
	"oracle":  judge,     // WORKERS FILE: findings of the Go oracle on a file of one line each, as lineworthy batch writes them
	"compare": compare,   // FILE FILE...: are the findings the same, whoever wrote them?
	"serve":   serve,     // ADDRESS DIR: give out the files of DIR over HTTP, with ETags
	"key":     key,       // PRIVATE PUBLIC: a key to sign a bundle with
	"table":   table,     // FILE: a Markdown table of measured times
}

func main() {
	if len(os.Args) < 2 || commands[os.Args[1]] == nil {
		fmt.Fprintln(os.Stderr, "want make, stream, sheets, post, oracle, compare, serve, key or table")
		os.Exit(2)
	}
	if err := commands[os.Args[1]](os.Args[2:]); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
}
