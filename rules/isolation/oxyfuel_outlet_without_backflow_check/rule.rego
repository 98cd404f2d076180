# METADATA
# title: Nothing keeps gas from flowing back in an oxy-fuel line
# description: |
#   The US welding rule wants a check valve, a water seal or a regulator at each station outlet. Oxygen
#   that flows back into the fuel gas makes an explosive mixture in the hose.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: line
#   scope: ["regime=29 CFR 1910.253"]
#   needs: []
#   message: "The sheet shows neither a check valve nor a regulator in the line"
#   action: "Fit a check valve or regulator at the outlet, and flashback arresters as the site asks."
#   basis:
#     - document: 29 CFR 1910.253
#       edition: "CFR 2015 annual edition"
#       clause: "(e)(4)(i)"
#       standing: published
package rules.isolation.oxyfuel_outlet_without_backflow_check

report contains {"subject": "line"} if {
	"29 CFR 1910.253" in input.line.regimes
	count({p.id | some p in input.parts; p.kind in {"check-valve", "regulator"}}) == 0
}
