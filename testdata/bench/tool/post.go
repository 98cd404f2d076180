package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"net/http"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"sync"
	"time"
)

// post puts the facts to a stock server over so many connections that stay open, and prints the time for each line in
// microseconds on the standard error. Reading the files counts, as it does for the others.
func post(args []string) error {
	if len(args) != 3 {
		return fmt.Errorf("want URL CONNECTIONS DIR")
	}
	connections, err := strconv.Atoi(args[1])
	if err != nil {
		return err
	}
	files, err := filepath.Glob(filepath.Join(args[2], "*.json"))
	if err != nil || len(files) == 0 {
		return fmt.Errorf("no files in %s (%v)", args[2], err)
	}
	answers, errs := make([]json.RawMessage, len(files)), make([]error, connections)
	client := &http.Client{Transport: &http.Transport{MaxIdleConnsPerHost: connections}}
	start := time.Now()
	var wait sync.WaitGroup
	for c := range connections {
		wait.Go(func() {
			for i := c; i < len(files) && errs[c] == nil; i += connections {
				answers[i], errs[c] = ask(client, args[0], files[i])
			}
		})
	}
	wait.Wait()
	took := time.Since(start)
	if i := slices.IndexFunc(errs, func(err error) bool { return err != nil }); i >= 0 {
		return errs[i]
	}
	fmt.Fprintln(os.Stderr, took.Microseconds()/int64(len(files)))
	for i, a := range answers {
		fmt.Printf(`{"path":%q,"result":%s}`+"\n", files[i], a)
	}
	return nil
}

func ask(client *http.Client, url, file string) (json.RawMessage, error) {
	text, err := os.ReadFile(file)
	if err != nil {
		return nil, err
	}
	body := append(append([]byte(`{"input":`), text...), '}')
	res, err := client.Post(url, "application/json", bytes.NewReader(body))
	if err != nil {
		return nil, err
	}
	defer res.Body.Close()
	text, err = io.ReadAll(res.Body)
	if err != nil {
		return nil, err
	}
	var out struct{ Result json.RawMessage }
	if err := json.Unmarshal(text, &out); err != nil || out.Result == nil {
		return nil, fmt.Errorf("%s: %s", file, text)
	}
	return out.Result, nil
}
