# METADATA
# title: Nobody stays with an ammonia transfer
# description: |
#   The US ammonia rule wants an attendant from the first connection to the last.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: line
#   scope: ["regime=29 CFR 1910.111"]
#   needs: [line.attended]
#   message: "Nobody stays with the ammonia transfer, and the ammonia rule asks for an attendant all the time"
#   action: "Name a trained attendant who stays for the whole transfer."
#   basis:
#     - document: 29 CFR 1910.111
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(12)(ii)"
#       standing: published
package rules.isolation.ammonia_transfer_unattended

report contains {"subject": "line"} if {
	"29 CFR 1910.111" in input.line.regimes
	input.line.attended == false
}
