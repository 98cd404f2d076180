package main

import (
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"lineworthy/catalog"
	"lineworthy/check/report"
	"lineworthy/rules"
)

type completer = func(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective)

// completes gives every command what a shell can offer after it: entries of the catalog, rules, sheets and formats. A
// command that brings its own is left alone.
func completes(root *cobra.Command) *cobra.Command {
	byPath := map[string]completer{
		"check": files("yaml", "yml"), "facts": files("yaml", "yml"), "window": files("yaml", "yml"), "plan": files("yaml", "yml"), "batch": files("yaml", "yml"), "compare": files("yaml", "yml", "json"),
		"explain": explainArgs, "report": files("json"), "catalog show": entryArgs, "catalog search": entryArgs, "catalog list": kindArgs,
		"rules show": ruleArgs, "rules explain": ruleArgs, "schema": cobra.FixedCompletions(schemaNames, cobra.ShellCompDirectiveNoFileComp),
	}
	eachCommand(root, func(c *cobra.Command) {
		path := strings.TrimPrefix(c.CommandPath(), root.Name()+" ")
		if args := byPath[path]; args != nil && c.ValidArgsFunction == nil && len(c.ValidArgs) == 0 {
			c.ValidArgsFunction = args
		}
		if c.Flags().Lookup("format") != nil {
			_ = c.RegisterFlagCompletionFunc("format", cobra.FixedCompletions(formatsOf(path), cobra.ShellCompDirectiveNoFileComp)) // one that is registered stays
		}
		if c.Flags().Lookup("catalog") != nil {
			_ = c.MarkFlagDirname("catalog")
		}
	})
	return root
}

func eachCommand(c *cobra.Command, do func(*cobra.Command)) {
	do(c)
	for _, sub := range c.Commands() {
		eachCommand(sub, do)
	}
}

func formatsOf(path string) []string {
	switch path {
	case "check", "report":
		return report.Formats()
	case "compare":
		return compareFormats
	case "explain":
		return explainFormats
	}
	return []string{"text", "json"}
}

func files(endings ...string) completer {
	return func(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
		return endings, cobra.ShellCompDirectiveFilterFileExt
	}
}

// entryArgs offers a kind and then the ids of that kind, or any id at once.
func entryArgs(_ *cobra.Command, args []string, typed string) ([]string, cobra.ShellCompDirective) {
	c, kinds := catalog.Open(), catalog.Kinds
	var out []string
	if len(args) > 0 {
		kind, ok := kindOf(args[0])
		if !ok || len(args) > 1 {
			return nil, cobra.ShellCompDirectiveNoFileComp
		}
		kinds = []string{kind}
	} else {
		for _, k := range append(slices.Clone(catalog.Kinds), tableKind) {
			out = append(out, one(k)+"\tkind of entry")
		}
	}
	for _, k := range kinds {
		ids := c.IDs(k)
		if k == tableKind {
			ids = c.TableIDs()
		}
		for _, id := range ids {
			out = append(out, id+"\t"+one(k))
		}
	}
	return starting(out, typed), cobra.ShellCompDirectiveNoFileComp
}

func kindArgs(_ *cobra.Command, args []string, typed string) ([]string, cobra.ShellCompDirective) {
	if len(args) > 0 {
		return nil, cobra.ShellCompDirectiveNoFileComp
	}
	return starting(append(slices.Clone(catalog.Kinds), tableKind), typed), cobra.ShellCompDirectiveNoFileComp
}

func ruleArgs(_ *cobra.Command, args []string, typed string) ([]string, cobra.ShellCompDirective) {
	set, err := rules.Load()
	if err != nil || len(args) > 0 {
		return nil, cobra.ShellCompDirectiveNoFileComp
	}
	var out []string
	for _, r := range set.Index() {
		out = append(out, r.ID+"\t"+r.Title)
	}
	return starting(out, typed), cobra.ShellCompDirectiveNoFileComp
}

// starting keeps what begins as typed, in any case: ids are written in small and capital letters.
func starting(all []string, typed string) []string {
	return slices.DeleteFunc(all, func(s string) bool { return !strings.HasPrefix(strings.ToLower(s), strings.ToLower(typed)) })
}
