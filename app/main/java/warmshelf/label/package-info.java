/** Short codes and QR codes on labels: scanned or typed, each opens the page of its rack, mat or sowing. */
package warmshelf.label;
