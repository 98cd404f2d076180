# Sets OPA to a stock rules engine of the version in go.mod, built in $work unless OPA names one. Sourced by the scripts.
if [ -z "${OPA:-}" ]; then
	version=$(go list -m -f '{{.Version}}' github.com/open-policy-agent/opa)
	GOBIN=$work go install "github.com/open-policy-agent/opa@$version"
	OPA=$work/opa
fi
